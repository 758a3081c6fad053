package org.swathbook.rules;

import static org.swathbook.catalog.Position.BURNDOWN;
import static org.swathbook.catalog.Position.POST;
import static org.swathbook.catalog.Position.PRE;
import static org.swathbook.catalog.Position.PREPLANT;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Period;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.UseBuilder;

/** Examples of the rules on stage, height and days. */
final class TimingCases {
  private TimingCases() {}

  static List<RuleCase> all() {
    return Stream.of(window(), planting(), repeat(), harvest(), nextCrop())
        .flatMap(List::stream)
        .toList();
  }

  private static FieldBuilder soybean() {
    return FieldBuilder.of("C-1", "soybean", "2027-05-11").harvest("2027-10-01");
  }

  private static FieldBuilder corn() {
    return FieldBuilder.of("C-2", "corn", "2027-04-28").harvest("2027-10-07");
  }

  private static UseBuilder post(String crop, String rate) {
    return UseBuilder.of(crop, POST).traits().rate(rate).noCropHeight().noSoilPh();
  }

  private static List<RuleCase> window() {
    IngredientBuilder atrazine =
        IngredientBuilder.of("atrazine", 5, Movement.XYLEM, Basis.AI)
            .foliar(2)
            .use(
                post("corn", "0.5-2.0 lb ai/acre")
                    .through("emergence", "")
                    .cropHeight(Limit.below(12 * 2.54)));
    IngredientBuilder flumioxazin =
        IngredientBuilder.of("flumioxazin", 14, Movement.CONTACT, Basis.AI)
            .soil(0.063, 28, 0.096, 42, 7)
            .use(
                UseBuilder.of("soybean", PREPLANT, PRE)
                    .through("", "+3")
                    .traits()
                    .rate("0.063-0.096 lb ai/acre")
                    .noSoilPh());
    IngredientBuilder imazethapyr =
        IngredientBuilder.of("imazethapyr", 2, Movement.SYSTEMIC, Basis.AI)
            .foliar(1)
            .use(post("soybean", "0.063 lb ai/acre").before("emergence", "R1"));
    IngredientBuilder clethodim =
        IngredientBuilder.of("clethodim", 1, Movement.SYSTEMIC, Basis.AI)
            .foliar(1)
            .use(post("soybean", "0.09-0.125 lb ai/acre").through("", "harvest-60"));
    return List.of(
        RuleCase.trips(
            "stage-window",
            "atrazine on corn of 12 in with 'before 12 in'",
            () -> {
              CaseBook book = CaseBook.of(corn()).active(atrazine);
              return book.uses(book.dayOfHeight(12), "atrazine", "1.0 lb ai/acre");
            }),
        RuleCase.trips(
            "stage-window",
            "flumioxazin 5 days after planting, where 3 are the most",
            () ->
                CaseBook.of(soybean())
                    .active(flumioxazin)
                    .uses("2027-05-16", "flumioxazin", "0.08 lb ai/acre")),
        RuleCase.trips(
            "stage-window",
            "imazethapyr at R1 with 'before R1'",
            () -> {
              CaseBook book = CaseBook.of(soybean()).active(imazethapyr);
              return book.uses(book.dayOfStage("R1"), "imazethapyr", "0.063 lb ai/acre");
            }),
        RuleCase.silent(
            "stage-window",
            "clethodim at R2 with 75 days to harvest",
            () -> {
              CaseBook book = CaseBook.of(soybean().harvest("2027-09-20")).active(clethodim);
              LocalDate r2 = book.dayOfStage("R2");
              CaseBook cut =
                  CaseBook.of(soybean().harvest(r2.plusDays(75).toString())).active(clethodim);
              return cut.uses(r2, "clethodim", "0.094 lb ai/acre");
            }));
  }

  private static List<RuleCase> planting() {
    IngredientBuilder ester =
        IngredientBuilder.of("2,4-D ester", 4, Movement.SYSTEMIC, Basis.AE)
            .foliar(1)
            .use(
                UseBuilder.of("soybean", BURNDOWN, PREPLANT)
                    .before("", "planting")
                    .traits()
                    .rate("0.25-1.0 lb ae/acre")
                    .plantingBand("0.5 lb ae/acre", 7, 0)
                    .plantingBand("1.0 lb ae/acre", 30, 0));
    IngredientBuilder dicamba =
        IngredientBuilder.of("dicamba", 4, Movement.SYSTEMIC, Basis.AE)
            .foliar(4)
            .use(
                UseBuilder.of("soybean", BURNDOWN, PREPLANT)
                    .before("", "planting")
                    .traits()
                    .rate("0.25-0.5 lb ae/acre")
                    .plantingBand("0.25 lb ae/acre", 14, 25.4)
                    .plantingBand("0.5 lb ae/acre", 28, 25.4));
    return List.of(
        RuleCase.trips(
            "planting-interval",
            "2,4-D ester 1.0 lb ae/acre 10 days before soybean, where 30 are needed",
            () ->
                CaseBook.of(soybean())
                    .active(ester)
                    .uses("2027-05-01", "2,4-D ester", "1.0 lb ae/acre")),
        RuleCase.trips(
            "planting-interval",
            "dicamba 0.25 lb ae/acre 14 days before with 0.6 in of rain, where 1 in must fall first",
            () ->
                CaseBook.of(soybean())
                    .active(dicamba)
                    .rain("2027-04-30", 0.6)
                    .uses("2027-04-27", "dicamba", "0.25 lb ae/acre")),
        RuleCase.silent(
            "planting-interval",
            "2,4-D ester 0.5 lb ae/acre 10 days before soybean, where 7 are needed",
            () ->
                CaseBook.of(soybean())
                    .active(ester)
                    .uses("2027-05-01", "2,4-D ester", "0.5 lb ae/acre")),
        RuleCase.silent(
            "planting-interval",
            "dicamba 0.25 lb ae/acre when 1 in of rain has fallen 14 days before",
            () ->
                CaseBook.of(soybean())
                    .active(dicamba)
                    .rain("2027-04-27", 1.0)
                    .uses("2027-04-25", "dicamba", "0.25 lb ae/acre")));
  }

  private static List<RuleCase> repeat() {
    IngredientBuilder choline =
        IngredientBuilder.of("2,4-D choline", 4, Movement.SYSTEMIC, Basis.AE)
            .capGroup("2,4-D")
            .foliar(1)
            .use(
                post("soybean", "0.47-0.95 lb ae/acre")
                    .through("emergence", "R1")
                    .traits("2,4-D")
                    .cap("2.85 lb ae/acre")
                    .applications(3)
                    .repeatDays(12));
    return List.of(
        RuleCase.trips(
            "repeat-interval",
            "2,4-D choline 8 days after the first, where 12 are needed",
            () -> {
              CaseBook book = CaseBook.of(soybean().traits("2,4-D")).active(choline);
              return book.sequence(
                  book.pass(0, "2027-06-07", "2,4-D choline", "0.95 lb ae/acre"),
                  book.pass(1, "2027-06-15", "2,4-D choline", "0.95 lb ae/acre"));
            }),
        RuleCase.silent(
            "repeat-interval",
            "2,4-D choline on day 12",
            () -> {
              CaseBook book = CaseBook.of(soybean().traits("2,4-D")).active(choline);
              return book.sequence(
                  book.pass(0, "2027-06-07", "2,4-D choline", "0.95 lb ae/acre"),
                  book.pass(1, "2027-06-19", "2,4-D choline", "0.95 lb ae/acre"));
            }));
  }

  private static List<RuleCase> harvest() {
    IngredientBuilder clethodim =
        IngredientBuilder.of("clethodim", 1, Movement.SYSTEMIC, Basis.AI)
            .foliar(1)
            .use(post("soybean", "0.09-0.125 lb ai/acre").noTiming().grainDays(60));
    IngredientBuilder sMetolachlor =
        IngredientBuilder.of("S-metolachlor", 15, Movement.SHOOT, Basis.AI)
            .soil(0.95, 21, 1.9, 42, 12)
            .use(post("soybean", "0.95-1.27 lb ai/acre").noTiming().grainDays(75));
    return List.of(
        RuleCase.trips(
            "harvest-interval",
            "clethodim on 10 Aug in soybean cut on 28 Sep, 49 days where 60 are needed",
            () ->
                CaseBook.of(soybean().harvest("2027-09-28"))
                    .active(clethodim)
                    .uses("2027-08-10", "clethodim", "0.094 lb ai/acre")),
        RuleCase.silent(
            "harvest-interval",
            "S-metolachlor 80 days before harvest, where 75 are needed",
            () ->
                CaseBook.of(soybean().harvest("2027-09-28"))
                    .active(sMetolachlor)
                    .uses("2027-07-10", "S-metolachlor", "1.0 lb ai/acre")));
  }

  static RotationRow months(SoilCondition when, int months) {
    return new RotationRow(
        when,
        Set.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new Period(months, 0),
        OptionalDouble.empty());
  }

  private static List<RuleCase> nextCrop() {
    IngredientBuilder fomesafen =
        IngredientBuilder.of("fomesafen", 14, Movement.CONTACT, Basis.AI)
            .soil(0.18, 21, 0.375, 35, 12)
            .foliar(1)
            .rotation("corn", months(SoilCondition.ALWAYS, 10))
            .use(post("soybean", "0.18-0.375 lb ai/acre").noTiming().grainDays(45));
    IngredientBuilder nicosulfuron =
        IngredientBuilder.of("nicosulfuron", 2, Movement.SYSTEMIC, Basis.AI)
            .foliar(4)
            .rotation(
                "grain-sorghum",
                months(
                    LabelCases.when(Set.of(), Optional.empty(), Optional.of(Limit.below(7.5))), 10),
                months(SoilCondition.ALWAYS, 18))
            .use(post("corn", "0.031 lb ai/acre").noTiming().grainDays(70));
    FieldBuilder thenCorn = soybean().next("corn", "2028-04-28");
    return List.of(
        RuleCase.trips(
            "next-crop-interval",
            "fomesafen on 14 Jul and corn planted on 28 Apr, where 10 months are needed",
            () ->
                CaseBook.of(thenCorn)
                    .active(fomesafen)
                    .uses("2027-07-14", "fomesafen", "0.25 lb ai/acre")),
        RuleCase.trips(
            "next-crop-interval",
            "nicosulfuron last June at pH 8.0 and sorghum this May, where 18 months are needed",
            () -> {
              CaseBook book =
                  CaseBook.of(
                          FieldBuilder.of("C-3", "grain-sorghum", "2027-05-28")
                              .soil(SoilTexture.SILT_LOAM, 1.7, 8.0))
                      .active(nicosulfuron)
                      .applied(
                          "2026-06-10", 2026, "nicosulfuron", "0.031 lb ai/acre", "corn", "V4");
              Findings out = Findings.all();
              RuleBook.nextCrop().judgeJournal(book.book(), book.field(), out);
              return out;
            }),
        RuleCase.silent(
            "next-crop-interval",
            "fomesafen on 20 Jun and corn planted on 28 Apr",
            () ->
                CaseBook.of(thenCorn)
                    .active(fomesafen)
                    .uses("2027-06-20", "fomesafen", "0.25 lb ai/acre")),
        RuleCase.silent(
            "next-crop-interval",
            "nicosulfuron last June at pH 7.0 and sorghum this May, where 10 are needed",
            () -> {
              CaseBook book =
                  CaseBook.of(
                          FieldBuilder.of("C-3", "grain-sorghum", "2027-05-28")
                              .soil(SoilTexture.SILT_LOAM, 1.7, 7.0))
                      .active(nicosulfuron)
                      .applied(
                          "2026-06-10", 2026, "nicosulfuron", "0.031 lb ai/acre", "corn", "V4");
              Findings out = Findings.all();
              RuleBook.nextCrop().judgeJournal(book.book(), book.field(), out);
              return out;
            }));
  }
}
