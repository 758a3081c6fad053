package org.swathbook.rules;

import static org.swathbook.catalog.Position.BURNDOWN;
import static org.swathbook.catalog.Position.POST;
import static org.swathbook.catalog.Position.PRE;
import static org.swathbook.catalog.Position.PREPLANT;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.measure.Basis;
import org.swathbook.measure.RateRange;
import org.swathbook.rules.label.NotVerifiedRule;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.UseBuilder;

/** Examples of the rules on crop, trait, rate, soil, caps and counts. */
final class LabelCases {
  private LabelCases() {}

  static List<RuleCase> all() {
    return java.util.stream.Stream.of(
            crop(),
            trait(),
            rate(),
            low(),
            soil(),
            cap(),
            count(),
            workedIn(),
            registered(),
            condition(),
            notVerified())
        .flatMap(List::stream)
        .toList();
  }

  private static FieldBuilder soybean() {
    return FieldBuilder.of("C-1", "soybean", "2027-05-11").harvest("2027-10-01");
  }

  private static FieldBuilder corn() {
    return FieldBuilder.of("C-2", "corn", "2027-04-28").harvest("2027-10-07");
  }

  private static FieldBuilder sorghum() {
    return FieldBuilder.of("C-3", "grain-sorghum", "2027-05-28").harvest("2027-10-18");
  }

  private static UseBuilder pre(String crop, String rate) {
    return UseBuilder.of(crop, PREPLANT, PRE)
        .before("", "emergence")
        .traits()
        .rate(rate)
        .plantingDays(0)
        .noSoilPh();
  }

  private static UseBuilder post(String crop, String rate) {
    return UseBuilder.of(crop, POST)
        .through("emergence", "harvest-30")
        .traits()
        .rate(rate)
        .noCropHeight()
        .noSoilPh()
        .grainDays(30);
  }

  private static List<RuleCase> crop() {
    IngredientBuilder tembotrione =
        IngredientBuilder.of("tembotrione", 27, Movement.XYLEM, Basis.AI)
            .foliar(1)
            .use(post("corn", "0.08 lb ai/acre"));
    IngredientBuilder acetochlor =
        IngredientBuilder.of("acetochlor", 15, Movement.SHOOT, Basis.AI)
            .soil(0.9, 21, 1.5, 35, 12)
            .use(pre("soybean", "0.9-1.5 lb ai/acre").formulations("CS"));
    return List.of(
        RuleCase.trips(
            "crop-not-listed",
            "tembotrione over grain sorghum",
            () ->
                CaseBook.of(sorghum())
                    .active(tembotrione)
                    .uses("2027-06-25", "tembotrione", "0.08 lb ai/acre")),
        RuleCase.trips(
            "crop-not-listed",
            "acetochlor as an emulsifiable concentrate in soybean, where only capsules are listed",
            () ->
                CaseBook.of(soybean())
                    .active(acetochlor, "EC")
                    .uses("2027-05-11", "acetochlor", "1.2 lb ai/acre")),
        RuleCase.silent(
            "crop-not-listed",
            "acetochlor in capsules in soybean",
            () ->
                CaseBook.of(soybean())
                    .active(acetochlor, "CS")
                    .uses("2027-05-11", "acetochlor", "1.2 lb ai/acre")));
  }

  static IngredientBuilder glyphosate() {
    return IngredientBuilder.of("glyphosate", 9, Movement.SYSTEMIC, Basis.AE)
        .foliar(1)
        .use(
            UseBuilder.ofAnyCrop(BURNDOWN, PREPLANT, PRE)
                .before("", "emergence")
                .traits()
                .rate("0.75-1.5 lb ae/acre")
                .plantingDays(0)
                .noSoilPh())
        .use(post("soybean", "0.75-1.13 lb ae/acre").traits("glyphosate"));
  }

  private static List<RuleCase> trait() {
    IngredientBuilder sMetolachlor =
        IngredientBuilder.of("S-metolachlor", 15, Movement.SHOOT, Basis.AI)
            .soil(0.95, 21, 1.9, 42, 12)
            .use(pre("grain-sorghum", "0.95-1.6 lb ai/acre").traits("safened-seed"));
    IngredientBuilder dicamba =
        IngredientBuilder.of("dicamba", 4, Movement.SYSTEMIC, Basis.AE)
            .foliar(4)
            .use(post("soybean", "0.5 lb ae/acre").traits("dicamba"));
    return List.of(
        RuleCase.trips(
            "trait-needed",
            "glyphosate over soybean at V3 with traits 'none'",
            () -> {
              CaseBook book = CaseBook.of(soybean().traits()).active(glyphosate());
              return book.uses(book.dayOfStage("V3"), "glyphosate", "1.13 lb ae/acre");
            }),
        RuleCase.trips(
            "trait-needed",
            "S-metolachlor before emergence on sorghum without safened seed",
            () ->
                CaseBook.of(sorghum().traits())
                    .active(sMetolachlor)
                    .uses("2027-05-28", "S-metolachlor", "1.27 lb ai/acre")),
        RuleCase.trips(
            "trait-needed",
            "dicamba over soybean with the 2,4-D trait",
            () -> {
              CaseBook book = CaseBook.of(soybean().traits("2,4-D")).active(dicamba);
              return book.uses(book.dayOfStage("V2"), "dicamba", "0.5 lb ae/acre");
            }),
        RuleCase.silent(
            "trait-needed",
            "glyphosate as a burndown before emergence on soybean without a trait",
            () ->
                CaseBook.of(soybean().traits())
                    .active(glyphosate())
                    .uses("2027-05-05", "glyphosate", "1.13 lb ae/acre")));
  }

  private static List<RuleCase> rate() {
    IngredientBuilder flumioxazin =
        IngredientBuilder.of("flumioxazin", 14, Movement.CONTACT, Basis.AI)
            .soil(0.063, 28, 0.096, 42, 7)
            .use(pre("soybean", "0.063-0.096 lb ai/acre"));
    FieldBuilder withTrait = soybean().traits("glyphosate");
    return List.of(
        RuleCase.trips(
            "rate-above-use",
            "glyphosate 11.3 lb ae/acre, a slipped decimal",
            () -> {
              CaseBook book = CaseBook.of(withTrait).active(glyphosate());
              return book.uses(book.dayOfStage("V3"), "glyphosate", "11.3 lb ae/acre");
            }),
        RuleCase.trips(
            "rate-above-use",
            "flumioxazin 0.1 lb ai/acre in soybean, where 0.096 is the most",
            () ->
                CaseBook.of(soybean())
                    .active(flumioxazin)
                    .uses("2027-05-11", "flumioxazin", "0.1 lb ai/acre")),
        RuleCase.silent(
            "rate-above-use",
            "glyphosate 1.125 lb ae/acre, 32 fl oz of a 4.5 lb ae/gal product, against 1.13",
            () -> {
              CaseBook book = CaseBook.of(withTrait).active(glyphosate());
              return book.uses(book.dayOfStage("V3"), "glyphosate", "1.125 lb ae/acre");
            }));
  }

  private static List<RuleCase> low() {
    return List.of(
        RuleCase.trips(
            "rate-below-use",
            "clethodim 0.031 lb ai/acre where the use begins at 0.094",
            () -> clethodim("0.094-0.125 lb ai/acre", "0.031 lb ai/acre")),
        RuleCase.silent(
            "rate-below-use",
            "clethodim 0.047 lb ai/acre where the catalog lists that rate",
            () -> clethodim("0.047-0.125 lb ai/acre", "0.047 lb ai/acre")));
  }

  private static Findings clethodim(String listed, String rate) {
    CaseBook book =
        CaseBook.of(soybean())
            .active(
                IngredientBuilder.of("clethodim", 1, Movement.SYSTEMIC, Basis.AI)
                    .foliar(1)
                    .use(post("soybean", listed)));
    return book.uses(book.dayOfStage("V4"), "clethodim", rate);
  }

  private static List<RuleCase> workedIn() {
    return List.of(
        RuleCase.trips(
            "incorporation-needed",
            "trifluralin in no-till",
            () -> trifluralin(soybean(), "2027-05-11")),
        RuleCase.trips(
            "incorporation-needed",
            "trifluralin a day after the tillage at planting",
            () -> trifluralin(soybean().tilled(), "2027-05-12")),
        RuleCase.silent(
            "incorporation-needed",
            "trifluralin, disked in on the same day",
            () -> trifluralin(soybean().tilled(), "2027-05-11")),
        RuleCase.trips(
            "incorporation-needed",
            "pendimethalin in corn, worked in by the tillage at planting",
            () -> pendimethalin(corn().tilled(), "2027-04-27")),
        RuleCase.silent(
            "incorporation-needed",
            "pendimethalin in corn on the day of planting, left on top",
            () -> pendimethalin(corn().tilled(), "2027-04-28")),
        RuleCase.silent(
            "incorporation-needed",
            "pendimethalin before planting where nobody tills",
            () -> pendimethalin(corn(), "2027-04-27")));
  }

  private static Findings pendimethalin(FieldBuilder field, String date) {
    return CaseBook.of(field)
        .active(
            IngredientBuilder.of("pendimethalin", 3, Movement.SHOOT, Basis.AI)
                .soil(0.7, 40, 2.0, 70, 19)
                .use(pre("corn", "0.95-1.43 lb ai/acre").neverWorkedIn()))
        .uses(date, "pendimethalin", "0.95 lb ai/acre");
  }

  private static Findings trifluralin(FieldBuilder field, String date) {
    return CaseBook.of(field)
        .active(
            IngredientBuilder.of("trifluralin", 3, Movement.SHOOT, Basis.AI)
                .soil(0.5, 40, 1.0, 70, 0)
                .incorporate("within 24 h")
                .use(pre("soybean", "0.5-1.0 lb ai/acre")))
        .uses(date, "trifluralin", "0.75 lb ai/acre");
  }

  private static List<RuleCase> registered() {
    UseBuilder over = post("soybean", "0.5 lb ae/acre").traits("dicamba");
    UseBuilder ended = post("soybean", "0.5 lb ae/acre").traits("dicamba").labelYears(2025, 2026);
    UseBuilder open = post("soybean", "0.5 lb ae/acre").traits("dicamba").labelYears(2026, 2027);
    UseBuilder kansas = post("soybean", "0.5 lb ae/acre").traits("dicamba").onlyIn("KS");
    return List.of(
        RuleCase.trips(
            "registration-status",
            "dicamba over soybean a year after the last of its label years",
            () -> dicamba(ended, "2027-06-10")),
        RuleCase.trips(
            "registration-status",
            "a use for Kansas alone in a Nebraska field",
            () -> dicamba(kansas, "2027-06-10")),
        RuleCase.silent(
            "registration-status",
            "dicamba over soybean in a label year",
            () -> dicamba(open, "2027-06-10")),
        RuleCase.trips(
            "cutoff-date",
            "dicamba over soybean on 5 Jul, where 30 Jun is the last date",
            () -> dicamba(over.lastDate("06-30"), "2027-07-05")),
        RuleCase.silent(
            "cutoff-date",
            "dicamba over soybean on 20 Jun",
            () -> dicamba(over.lastDate("06-30"), "2027-06-20")));
  }

  private static Findings dicamba(UseBuilder use, String date) {
    return CaseBook.of(soybean().traits("dicamba"))
        .active(IngredientBuilder.of("dicamba", 4, Movement.SYSTEMIC, Basis.AE).foliar(4).use(use))
        .uses(date, "dicamba", "0.5 lb ae/acre");
  }

  static SoilCondition when(
      Set<SoilTexture> textures, Optional<Limit> organicMatter, Optional<Limit> ph) {
    return new SoilCondition(textures, organicMatter, ph, Optional.empty(), Optional.empty());
  }

  private static RateRow row(SoilCondition when, String rate) {
    return new RateRow(
        when, rate.isEmpty() ? Optional.empty() : Optional.of(RateRange.parse(rate)));
  }

  static IngredientBuilder metribuzin() {
    return IngredientBuilder.of("metribuzin", 5, Movement.XYLEM, Basis.AI)
        .soil(0.25, 24, 0.5, 40, 12)
        .rotation("corn")
        .use(
            pre("soybean", "0.25-0.5 lb ai/acre")
                .rates(
                    List.of(
                        row(
                            when(
                                Set.of(
                                    SoilTexture.SAND,
                                    SoilTexture.LOAMY_SAND,
                                    SoilTexture.SANDY_LOAM),
                                Optional.of(Limit.below(2)),
                                Optional.empty()),
                            ""),
                        row(SoilCondition.ALWAYS, "0.25-0.5 lb ai/acre")))
                .soilPh(Limit.below(7.5)));
  }

  private static List<RuleCase> soil() {
    IngredientBuilder atrazine =
        IngredientBuilder.of("atrazine", 5, Movement.XYLEM, Basis.AI)
            .soil(0.5, 21, 2.0, 50, 12)
            .use(
                pre("corn", "0.5-2.0 lb ai/acre")
                    .rates(
                        List.of(
                            row(
                                new SoilCondition(
                                    Set.of(),
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.of(true),
                                    Optional.of(Limit.below(30))),
                                "0.5-1.6 lb ai/acre"),
                            row(SoilCondition.ALWAYS, "0.5-2.0 lb ai/acre"))));
    return List.of(
        RuleCase.trips(
            "soil-limit",
            "metribuzin on sandy loam with 1.1 % organic matter",
            () ->
                CaseBook.of(soybean().soil(SoilTexture.SANDY_LOAM, 1.1, 6.6))
                    .active(metribuzin())
                    .uses("2027-05-11", "metribuzin", "0.38 lb ai/acre")),
        RuleCase.trips(
            "soil-limit",
            "metribuzin at pH 7.5",
            () ->
                CaseBook.of(soybean().soil(SoilTexture.SILT_LOAM, 2.6, 7.5))
                    .active(metribuzin())
                    .uses("2027-05-11", "metribuzin", "0.38 lb ai/acre")),
        RuleCase.trips(
            "soil-limit",
            "atrazine 2.0 lb on highly erodible ground with little residue, where 1.6 is the most",
            () ->
                CaseBook.of(corn().erodible(20))
                    .active(atrazine)
                    .uses("2027-04-28", "atrazine", "2.0 lb ai/acre")),
        RuleCase.silent(
            "soil-limit",
            "metribuzin 0.38 lb on silt loam with 2.6 % organic matter and pH 6.6",
            () ->
                CaseBook.of(soybean().soil(SoilTexture.SILT_LOAM, 2.6, 6.6))
                    .active(metribuzin())
                    .uses("2027-05-11", "metribuzin", "0.38 lb ai/acre")));
  }

  private static List<RuleCase> cap() {
    IngredientBuilder atrazine =
        IngredientBuilder.of("atrazine", 5, Movement.XYLEM, Basis.AI)
            .soil(0.5, 21, 2.0, 50, 12)
            .use(pre("corn", "0.5-2.0 lb ai/acre").cap("2.5 lb ai/acre"))
            .use(post("corn", "0.5-2.0 lb ai/acre").cap("2.5 lb ai/acre"));
    IngredientBuilder sMetolachlor =
        IngredientBuilder.of("S-metolachlor", 15, Movement.SHOOT, Basis.AI)
            .soil(0.95, 21, 1.9, 42, 12)
            .use(pre("soybean", "0.95-1.9 lb ai/acre").cap("2.48 lb ai/acre"))
            .use(post("soybean", "0.95-1.27 lb ai/acre").cap("2.48 lb ai/acre"));
    return List.of(
        RuleCase.trips(
            "annual-cap",
            "atrazine 1.6 before and 1.0 after emergence of corn, 2.6 over 2.5 lb ai/acre",
            () -> {
              CaseBook book = CaseBook.of(corn()).active(atrazine);
              return book.sequence(
                  book.pass(0, "2027-04-28", "atrazine", "1.6 lb ai/acre"),
                  book.pass(1, "2027-05-25", "atrazine", "1.0 lb ai/acre"));
            }),
        RuleCase.trips(
            "annual-cap",
            "S-metolachlor 1.27 + 1.27 in soybean, 2.54 over 2.48",
            () -> {
              CaseBook book = CaseBook.of(soybean()).active(sMetolachlor);
              return book.sequence(
                  book.pass(0, "2027-05-11", "S-metolachlor", "1.27 lb ai/acre"),
                  book.pass(1, "2027-06-08", "S-metolachlor", "1.27 lb ai/acre"));
            }),
        RuleCase.silent(
            "annual-cap",
            "S-metolachlor 0.95 + 1.19 in soybean, 2.14 of 2.48",
            () -> {
              CaseBook book = CaseBook.of(soybean()).active(sMetolachlor);
              return book.sequence(
                  book.pass(0, "2027-05-11", "S-metolachlor", "0.95 lb ai/acre"),
                  book.pass(1, "2027-06-08", "S-metolachlor", "1.19 lb ai/acre"));
            }));
  }

  private static List<RuleCase> count() {
    IngredientBuilder glufosinate =
        IngredientBuilder.of("glufosinate-ammonium", 10, Movement.CONTACT, Basis.AI)
            .foliar(4)
            .use(
                post("soybean", "0.53-0.66 lb ai/acre")
                    .traits("glufosinate")
                    .repeatDays(7)
                    .applications(2)
                    .cap("2 lb ai/acre"));
    FieldBuilder withTrait = soybean().traits("glufosinate");
    return List.of(
        RuleCase.trips(
            "application-count",
            "a third glufosinate where two are allowed",
            () -> {
              CaseBook book = CaseBook.of(withTrait).active(glufosinate);
              return book.sequence(
                  book.pass(0, "2027-06-01", "glufosinate-ammonium", "0.53 lb ai/acre"),
                  book.pass(1, "2027-06-12", "glufosinate-ammonium", "0.53 lb ai/acre"),
                  book.pass(2, "2027-06-24", "glufosinate-ammonium", "0.53 lb ai/acre"));
            }),
        RuleCase.silent(
            "application-count",
            "a second one made half on Monday, half on Tuesday",
            () -> {
              CaseBook book =
                  CaseBook.of(withTrait)
                      .active(glufosinate)
                      .appliedOn(80, "2027-06-01", "glufosinate-ammonium", "0.53 lb ai/acre", "V2")
                      .appliedOn(40, "2027-06-14", "glufosinate-ammonium", "0.53 lb ai/acre", "V5");
              return book.sequence(
                  book.pass(0, "2027-06-15", "glufosinate-ammonium", "0.53 lb ai/acre"));
            }));
  }

  /** The use rules with their asks summed up. */
  private static List<Finding> summedUp(Findings findings) {
    return NotVerifiedRule.sumUp(findings.sortedAsks()).stream().toList();
  }

  private static List<RuleCase> condition() {
    IngredientBuilder plain =
        IngredientBuilder.of("linuron", 5, Movement.XYLEM, Basis.AI)
            .soil(0.5, 28, 1.0, 42, 12)
            .use(pre("soybean", "0.5-1 lb ai/acre"));
    IngredientBuilder deep =
        IngredientBuilder.of("linuron", 5, Movement.XYLEM, Basis.AI)
            .soil(0.5, 28, 1.0, 42, 12)
            .use(pre("soybean", "0.5-1 lb ai/acre").onCondition("seed at least 1.75 in deep"));
    return List.of(
        new RuleCase(
            "label-condition",
            true,
            "linuron before emergence on soybean, whose seed must lie at least 1.75 in deep",
            () -> conditions(deep)),
        new RuleCase(
            "label-condition",
            false,
            "the same where the use has no condition in words",
            () -> conditions(plain)));
  }

  /** What is asked of the conditions of a label, as findings, by which cases are told apart. */
  private static List<Finding> conditions(IngredientBuilder active) {
    List<Ask> asks =
        CaseBook.of(soybean())
            .active(active)
            .uses("2027-05-11", "linuron", "0.75 lb ai/acre")
            .sortedAsks()
            .stream()
            .filter(a -> a.rule().value().equals("label-condition"))
            .toList();
    return NotVerifiedRule.sumUp(asks).stream()
        .map(
            f ->
                new Finding(
                    asks.get(0).rule(),
                    f.severity(),
                    f.message(),
                    f.limit(),
                    f.actual(),
                    f.source(),
                    f.remedy(),
                    f.about()))
        .toList();
  }

  private static List<RuleCase> notVerified() {
    IngredientBuilder noLimit =
        IngredientBuilder.of("metribuzin", 5, Movement.XYLEM, Basis.AI)
            .soil(0.25, 24, 0.5, 40, 12)
            .rotation("corn")
            .use(pre("soybean", "0.25-0.5 lb ai/acre"));
    return List.of(
        new RuleCase(
            "not-verified",
            true,
            "metribuzin with the soil pH of the field blank",
            () ->
                summedUp(
                    CaseBook.of(soybean().next("corn", "2028-05-01").soilUnknown())
                        .active(metribuzin())
                        .uses("2027-05-11", "metribuzin", "0.38 lb ai/acre"))),
        new RuleCase(
            "not-verified",
            false,
            "metribuzin whose pH limit is marked 'none'",
            () ->
                summedUp(
                    CaseBook.of(
                            soybean()
                                .next("corn", "2028-05-01")
                                .soil(SoilTexture.SILT_LOAM, 2.6, 6.6))
                        .active(noLimit)
                        .uses("2027-05-11", "metribuzin", "0.38 lb ai/acre"))));
  }
}
