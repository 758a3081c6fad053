package org.swathbook.rules;

import static org.swathbook.catalog.Position.BURNDOWN;
import static org.swathbook.catalog.Position.POST;
import static org.swathbook.catalog.Position.PRE;
import static org.swathbook.catalog.Position.PREPLANT;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.swathbook.book.DriverKind;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Movement;
import org.swathbook.measure.Basis;
import org.swathbook.program.Applicator;
import org.swathbook.program.Mix;
import org.swathbook.rules.SeasonCase.Outcome;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.UseBuilder;

/** Examples of the rules on a walked pass and on a whole season. */
final class SeasonCases {
  private static final String FIELD = "C-1";

  private SeasonCases() {}

  static List<RuleCase> all() {
    return Stream.of(
            singleSite(),
            resistant(),
            tall(),
            burndown(),
            gap(),
            overlap(),
            notCovered(),
            survivors(),
            oneSite(),
            windows(),
            cold(),
            restricted())
        .flatMap(List::stream)
        .toList();
  }

  static RuleCase example(boolean trips, String rule, String example, Supplier<SeasonCase> facts) {
    return new RuleCase(rule, trips, example, () -> facts.get().judge().findings());
  }

  static WeedPressure weed(
      String eppo, double perM2, DriverKind driver, double share, int... sites) {
    return Fixtures.weed(FIELD, eppo, perM2, driver, share, sites);
  }

  /** Soybean with traits, planted on 11 May, and the actives of these cases. */
  static CaseBook soybean(WeedPressure... weeds) {
    CaseBook book =
        CaseBook.of(
            FieldBuilder.of(FIELD, "soybean", "2027-05-11")
                .traits("2,4-D", "glufosinate", "glyphosate")
                .harvest("2027-10-01"));
    for (WeedPressure w : weeds) {
      book.weed(w);
    }
    return book.active(
            IngredientBuilder.of("S-metolachlor", 15, Movement.SHOOT, Basis.AI)
                .soil(0.95, 21, 1.9, 42, 12)
                .use(pre("0.95-1.9 lb ai/acre"))
                .use(post("0.95-1.27 lb ai/acre")))
        .active(
            IngredientBuilder.of("glyphosate", 9, Movement.SYSTEMIC, Basis.AE)
                .foliar(1)
                .use(
                    UseBuilder.ofAnyCrop(BURNDOWN, PREPLANT, PRE)
                        .before("", "emergence")
                        .traits()
                        .rate("0.75-1.5 lb ae/acre")
                        .plantingDays(0))
                .use(post("0.75-1.13 lb ae/acre").traits("glyphosate").weedHeights(12, 12)))
        .active(
            IngredientBuilder.of("glufosinate-ammonium", 10, Movement.CONTACT, Basis.AI)
                .foliar(4)
                .use(post("0.53-0.66 lb ai/acre").traits("glufosinate").weedHeights(4, 4)))
        .active(
            IngredientBuilder.of("2,4-D choline", 4, Movement.SYSTEMIC, Basis.AE)
                .foliar(1)
                .use(post("0.95 lb ae/acre").traits("2,4-D").weedHeights(6, 6)))
        .active(
            IngredientBuilder.of("fluroxypyr", 4, Movement.SYSTEMIC, Basis.AE)
                .foliar(1)
                .use(post("0.14 lb ae/acre").weedHeights(4, 4)))
        .active(
            IngredientBuilder.of("clethodim", 1, Movement.SYSTEMIC, Basis.AI)
                .foliar(1)
                .use(post("0.09-0.125 lb ai/acre").weedHeights(0.5, 0.5)));
  }

  static UseBuilder pre(String rate) {
    return UseBuilder.of("soybean", PREPLANT, PRE)
        .before("", "emergence")
        .traits()
        .rate(rate)
        .plantingDays(0);
  }

  static UseBuilder post(String rate) {
    return UseBuilder.of("soybean", POST)
        .before("emergence", "R1")
        .traits()
        .rate(rate)
        .noCropHeight();
  }

  private static final String JUNE = "2027-06-08";

  private static List<RuleCase> singleSite() {
    WeedPressure palmer = weed("AMAPA", 80, DriverKind.YES, 0.9, 2, 9);
    return List.of(
        example(
            true,
            "single-site",
            "2,4-D choline + glyphosate + S-metolachlor on Palmer amaranth that resists 2 and 9",
            () -> {
              CaseBook book = soybean(palmer);
              SeasonCase s = SeasonCase.of(book);
              Mix mix =
                  book.mix(
                      "2,4-D choline",
                      "0.95 lb ae/acre",
                      "glyphosate",
                      "1.13 lb ae/acre",
                      "S-metolachlor",
                      "1.0 lb ai/acre");
              return s.pass(
                  JUNE,
                  mix,
                  s.withSoil(
                      s.standing(
                          "AMAPA",
                          12,
                          3,
                          s.site("2,4-D choline", "AMAPA", 91),
                          s.site("glyphosate", "AMAPA", 97)),
                      s.site("S-metolachlor", "AMAPA", 82)));
            }),
        example(
            false,
            "single-site",
            "2,4-D choline + glufosinate on the same field",
            () -> {
              CaseBook book = soybean(palmer);
              SeasonCase s = SeasonCase.of(book);
              Mix mix =
                  book.mix(
                      "2,4-D choline",
                      "0.95 lb ae/acre",
                      "glufosinate-ammonium",
                      "0.59 lb ai/acre");
              return s.pass(
                  JUNE,
                  mix,
                  s.standing(
                      "AMAPA",
                      12,
                      3,
                      s.site("2,4-D choline", "AMAPA", 91),
                      s.site("glufosinate-ammonium", "AMAPA", 86)));
            }));
  }

  private static List<RuleCase> resistant() {
    WeedPressure kochia = weed("KCHSC", 15, DriverKind.YES, 0.9, 9);
    return List.of(
        example(
            true,
            "resistant-biotype",
            "glyphosate alone on kochia that resists site 9",
            () -> {
              CaseBook book = soybean(kochia);
              SeasonCase s = SeasonCase.of(book);
              return s.pass(
                  JUNE,
                  book.mix("glyphosate", "1.13 lb ae/acre"),
                  s.standing("KCHSC", 10, 3, s.site("glyphosate", "KCHSC", 94)));
            }),
        example(
            false,
            "resistant-biotype",
            "glyphosate + fluroxypyr on the same kochia",
            () -> {
              CaseBook book = soybean(kochia);
              SeasonCase s = SeasonCase.of(book);
              return s.pass(
                  JUNE,
                  book.mix("glyphosate", "1.13 lb ae/acre", "fluroxypyr", "0.14 lb ae/acre"),
                  s.standing(
                      "KCHSC",
                      10,
                      3,
                      s.site("glyphosate", "KCHSC", 94),
                      s.site("fluroxypyr", "KCHSC", 88)));
            }));
  }

  private static List<RuleCase> tall() {
    WeedPressure palmer = weed("AMAPA", 80, DriverKind.YES, 0);
    return List.of(
        example(
            true,
            "weed-too-tall",
            "Palmer amaranth 8 in and glufosinate with 4 in on its label",
            () -> {
              CaseBook book = soybean(palmer);
              SeasonCase s = SeasonCase.of(book);
              return s.pass(
                  JUNE,
                  book.mix("glufosinate-ammonium", "0.59 lb ai/acre"),
                  s.standing("AMAPA", 12, 8, s.site("glufosinate-ammonium", "AMAPA", 46)));
            }),
        example(
            false,
            "weed-too-tall",
            "Palmer amaranth 8 in with clethodim in the tank, which is not counted on for it",
            () -> {
              CaseBook book = soybean(palmer);
              SeasonCase s = SeasonCase.of(book);
              return s.pass(
                  JUNE, book.mix("clethodim", "0.094 lb ai/acre"), s.standing("AMAPA", 12, 8));
            }));
  }

  private static List<RuleCase> burndown() {
    return List.of(
        example(
            true,
            "burndown-missing",
            "no-till sorghum with kochia standing at planting and no burndown",
            () -> SeasonCase.of(sorghum(false))),
        example(false, "burndown-missing", "a tilled field", () -> SeasonCase.of(sorghum(true))));
  }

  private static CaseBook sorghum(boolean tilled) {
    FieldBuilder field =
        FieldBuilder.of(FIELD, "grain-sorghum", "2027-05-28").harvest("2027-10-18");
    return CaseBook.of(tilled ? field.tilled() : field)
        .rain("2027-04-10", 1)
        .rain("2027-04-25", 1)
        .weed(weed("KCHSC", 60, DriverKind.YES, 0));
  }

  private static List<RuleCase> gap() {
    return List.of(
        example(
            true,
            "layer-gap",
            "Palmer amaranth, 28 % of it exposed, with a layer at planting alone",
            () ->
                SeasonCase.of(soybean(weed("AMAPA", 80, DriverKind.YES, 0)))
                    .outcome("AMAPA", new Outcome().exposed(28))),
        example(
            false,
            "layer-gap",
            "kochia that is up before a late planting, 1 % of it exposed",
            () ->
                SeasonCase.of(soybean(weed("KCHSC", 15, DriverKind.YES, 0)))
                    .outcome("KCHSC", new Outcome().exposed(1))));
  }

  private static List<RuleCase> overlap() {
    WeedPressure palmer = weed("AMAPA", 80, DriverKind.YES, 0);
    return List.of(
        example(
            true,
            "layer-overlap",
            "the first layer ends on 10 Jun and the next gets its rain on 14 Jun, a hole of 4 days",
            () -> twoLayers(palmer, -4, 0.6)),
        example(
            false,
            "layer-overlap",
            "the next gets its rain on 3 Jun, an overlap of 7 days",
            () -> twoLayers(palmer, 7, 0.1)));
  }

  private static SeasonCase twoLayers(WeedPressure palmer, double days, double holes) {
    CaseBook book = soybean(palmer);
    Mix mix = book.mix("S-metolachlor", "1.0 lb ai/acre");
    SeasonCase s = SeasonCase.of(book);
    return s.pass("2027-05-11", mix, s.toCome("AMAPA"))
        .pass("2027-06-08", mix, s.toCome("AMAPA"))
        .outcome("AMAPA", new Outcome().overlap(days, holes));
  }

  private static List<RuleCase> notCovered() {
    return List.of(
        example(
            true,
            "weed-not-covered",
            "shattercane controlled to 40 % in sorghum that tolerates no grass herbicide",
            () ->
                SeasonCase.of(sorghum(true).weed(weed("SORVU", 9, DriverKind.YES, 0)))
                    .outcome("SORVU", new Outcome().control(40).unknown("atrazine"))),
        example(
            false,
            "weed-not-covered",
            "velvetleaf, 3 plants/m² and no driver, controlled to 94 %",
            () ->
                SeasonCase.of(soybean(weed("ABUTH", 3, DriverKind.NO, 0)))
                    .outcome("ABUTH", new Outcome().control(94))));
  }

  private static List<RuleCase> oneSite() {
    WeedPressure palmer = weed("AMAPA", 80, DriverKind.YES, 0);
    return List.of(
        example(
            true,
            "depends-on-one-site",
            "Palmer amaranth controlled to 96 %, and to 61 % without site 14",
            () ->
                SeasonCase.of(soybean(palmer))
                    .outcome("AMAPA", new Outcome().control(96).without(14, 61))),
        example(
            false,
            "depends-on-one-site",
            "Palmer amaranth controlled to 97 % with any one site gone",
            () ->
                SeasonCase.of(soybean(palmer))
                    .outcome("AMAPA", new Outcome().control(99).without(14, 97))));
  }

  private static List<RuleCase> windows() {
    WeedPressure palmer = weed("AMAPA", 80, DriverKind.YES, 0);
    return List.of(
        example(
            true,
            "window-confidence",
            "a pass with few open days, 46 % of the years",
            () -> SeasonCase.of(soybean(palmer)).windowConfidence(46)),
        example(
            false,
            "window-confidence",
            "a wide window, 94 % of the years",
            () -> SeasonCase.of(soybean(palmer)).windowConfidence(94)));
  }

  private static List<RuleCase> cold() {
    WeedPressure palmer = weed("AMAPA", 8, DriverKind.YES, 0);
    return List.of(
        example(
            true,
            "cold-days",
            "glyphosate on weeds that stand in March, 41 F by day",
            () -> glyphosateOn("2027-03-20", soybean(palmer))),
        example(
            false,
            "cold-days",
            "the same on a June day of 80 F",
            () -> glyphosateOn(JUNE, soybean(palmer))));
  }

  private static SeasonCase glyphosateOn(String date, CaseBook book) {
    return onPalmer(date, book, "glyphosate", "1.13 lb ae/acre");
  }

  /** Palmer amaranth of 3 in stands. */
  static SeasonCase onPalmer(String date, CaseBook book, String active, String rate) {
    SeasonCase s = SeasonCase.of(book);
    return s.pass(date, book.mix(active, rate), s.standing("AMAPA", 8, 3));
  }

  private static List<RuleCase> restricted() {
    return List.of(
        new RuleCase(
            "restricted-use",
            true,
            "a tank with atrazine by an applicator who is named without a certificate",
            () ->
                MixCase.in("corn")
                    .day(20, "V3", 6)
                    .tank("atrazine 1.0 ai")
                    .by(new Applicator("R. Invented", ""))
                    .findings()),
        example(
            false,
            "restricted-use",
            "a pass with glyphosate",
            () -> {
              CaseBook book = soybean();
              return SeasonCase.of(book).pass(JUNE, book.mix("glyphosate", "1.13 lb ae/acre"));
            }));
  }

  private static List<RuleCase> survivors() {
    WeedPressure palmer = weed("AMAPA", 80, DriverKind.YES, 0);
    return List.of(
        example(
            true,
            "survivors",
            "95 % control of 80 plants/m², 16,200 on an acre",
            () ->
                SeasonCase.of(soybean(palmer))
                    .outcome("AMAPA", new Outcome().survivors(0.05 * 80 * 4046.86))),
        example(
            true,
            "survivors",
            "two plants on an acre of a weed of which none may live",
            () ->
                SeasonCase.of(soybean(weed("AMAPA", 0.2, DriverKind.ZERO, 0)))
                    .outcome("AMAPA", new Outcome().survivors(2))),
        example(
            false,
            "survivors",
            "99.99 % control of 80 plants/m², 32 on an acre",
            () ->
                SeasonCase.of(soybean(palmer))
                    .outcome("AMAPA", new Outcome().survivors(0.0001 * 80 * 4046.86))));
  }
}
