package org.swathbook.rules;

import static org.swathbook.rules.SeasonCases.example;
import static org.swathbook.rules.SeasonCases.post;
import static org.swathbook.rules.SeasonCases.pre;
import static org.swathbook.rules.SeasonCases.soybean;
import static org.swathbook.rules.SeasonCases.weed;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.swathbook.book.DriverKind;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.measure.Basis;
import org.swathbook.measure.RateRange;
import org.swathbook.program.Mix;
import org.swathbook.testing.IngredientBuilder;

/** Examples of the rules on what a tank holds: adjuvants, rates, one active in two products. */
final class TankCases {
  private static final String JUNE = "2027-06-10";
  private static final String AMS = "8.5 lb/100 gal";

  private TankCases() {}

  static List<RuleCase> all() {
    return Stream.of(adjuvants(), rates(), twice()).flatMap(List::stream).toList();
  }

  /** Soybean with the dicamba trait, and dicamba over the top as its label wants it. */
  private static CaseBook dicamba() {
    return soybean()
        .active(
            IngredientBuilder.of("dicamba", 4, Movement.SYSTEMIC, Basis.AE)
                .foliar(4)
                .needs("40 fl oz/acre", true, "volatility-reducer")
                .refuses("ammonium-sulfate")
                .use(post("0.5 lb ae/acre")));
  }

  private static CaseBook sulfate() {
    return soybean()
        .active(
            IngredientBuilder.of("glyphosate-with-needs", 9, Movement.SYSTEMIC, Basis.AE)
                .foliar(1)
                .needs(AMS, false, "ammonium-sulfate")
                .use(post("0.75-1.13 lb ae/acre")));
  }

  private static List<RuleCase> adjuvants() {
    return List.of(
        example(
            true,
            "adjuvant-needed",
            "dicamba over soybean without a volatility reducer",
            () -> {
              CaseBook book = dicamba();
              return SeasonCase.of(book).pass(JUNE, book.mix("dicamba", "0.5 lb ae/acre"));
            }),
        example(
            false,
            "adjuvant-needed",
            "glyphosate with ammonium sulfate",
            () -> {
              CaseBook book = sulfate();
              Mix mix = book.mix("glyphosate-with-needs", "0.75 lb ae/acre");
              return SeasonCase.of(book).pass(JUNE, CaseBook.with(mix, "ammonium-sulfate", AMS));
            }),
        example(
            true,
            "adjuvant-refused",
            "ammonium sulfate with dicamba over soybean",
            () -> {
              CaseBook book = dicamba();
              Mix mix = book.mix("dicamba", "0.5 lb ae/acre");
              return SeasonCase.of(book).pass(JUNE, CaseBook.with(mix, "ammonium-sulfate", AMS));
            }),
        example(
            false,
            "adjuvant-refused",
            "ammonium sulfate with 2,4-D choline",
            () -> {
              CaseBook book = soybean();
              Mix mix = book.mix("2,4-D choline", "0.95 lb ae/acre");
              return SeasonCase.of(book).pass(JUNE, CaseBook.with(mix, "ammonium-sulfate", AMS));
            }));
  }

  private static List<RuleCase> rates() {
    WeedPressure palmer = weed("AMAPA", 80, DriverKind.YES, 0);
    return List.of(
        example(
            true,
            "below-full-rate",
            "glufosinate 0.40 lb ai/acre on Palmer amaranth 4 in tall, where the label has 0.53 to 0.66",
            () -> {
              CaseBook book = soybean(palmer);
              SeasonCase s = SeasonCase.of(book);
              return s.pass(
                  JUNE,
                  book.mix("glufosinate-ammonium", "0.40 lb ai/acre"),
                  s.standing("AMAPA", 12, 4, s.site("glufosinate-ammonium", "AMAPA", 60)));
            }),
        example(
            false,
            "below-full-rate",
            "pyroxasulfone at the low rate of the row for a sandy loam",
            () -> {
              CaseBook book =
                  soybean(palmer)
                      .active(
                          IngredientBuilder.of("pyroxasulfone", 15, Movement.SHOOT, Basis.AI)
                              .soil(0.08, 30, 0.16, 50, 12)
                              .use(
                                  pre("0.08-0.16 lb ai/acre")
                                      .rates(
                                          List.of(
                                              new RateRow(
                                                  SoilCondition.ALWAYS,
                                                  Optional.of(
                                                      RateRange.parse("0.08-0.12 lb ai/acre")))))));
              SeasonCase s = SeasonCase.of(book);
              return s.pass(
                      "2027-05-11",
                      book.mix("pyroxasulfone", "0.08 lb ai/acre"),
                      s.toCome("AMAPA", s.site("pyroxasulfone", "AMAPA", 85)))
                  .layer("AMAPA", 260, 290);
            }));
  }

  private static List<RuleCase> twice() {
    return List.of(
        example(
            true,
            "same-active-twice",
            "a premix with S-metolachlor beside S-metolachlor",
            () -> {
              CaseBook book =
                  soybean().product("s-metolachlor-glyphosate", "S-metolachlor", "glyphosate");
              return SeasonCase.of(book)
                  .pass(
                      JUNE,
                      Mix.of(
                          List.of(
                              book.ofProduct("s-metolachlor-glyphosate", "100 fl oz/acre"),
                              book.dose("S-metolachlor", "0.3 lb ai/acre"))));
            }),
        example(
            false,
            "same-active-twice",
            "potassium glyphosate topped up with isopropylamine glyphosate",
            () -> {
              CaseBook book = soybean().product("glyphosate-1sl", "glyphosate");
              return SeasonCase.of(book)
                  .pass(
                      JUNE,
                      Mix.of(
                          List.of(
                              book.dose("glyphosate", "0.75 lb ae/acre"),
                              book.ofProduct("glyphosate-1sl", "32 fl oz/acre"))));
            }));
  }
}
