package org.swathbook.rules;

import static org.swathbook.catalog.Position.BURNDOWN;
import static org.swathbook.catalog.Position.PRE;
import static org.swathbook.catalog.Position.PREPLANT;
import static org.swathbook.rules.OneActive.active;
import static org.swathbook.rules.OneActive.post;
import static org.swathbook.rules.OneActive.soybean;
import static org.swathbook.rules.SaidCase.says;
import static org.swathbook.rules.StarterTanks.STARTER;
import static org.swathbook.rules.StarterTanks.soy;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.book.DriverKind;
import org.swathbook.book.SprayRecord;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Registration.Cutoff;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.check.Judgement;
import org.swathbook.measure.Period;
import org.swathbook.rules.SaidCase.Found;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Restated;
import org.swathbook.testing.Sky;
import org.swathbook.testing.UseBuilder;

/**
 * All that the rules on stage, height and days say and ask, to the number, at their limits and on
 * either side. Tanks have the starter catalog, books of one active an invented one; 8 May is the
 * day of planting of the former, 11 May of the latter.
 */
class TimingRulesSayTest {
  private static final String HALF = "0.5 lb ai/acre";

  static Stream<SaidCase> cases() {
    return Stream.of(
            lastDates(),
            harvests(),
            windows(),
            nextCrops(),
            planting(),
            repeats(),
            delays(),
            weeds(),
            activation(),
            burndowns())
        .flatMap(List::stream);
  }

  private static MixCase before(int days, String tank) {
    return MixCase.in("soybean").day(-days, "", 0).tank(tank);
  }

  private static MixCase corn(String stage, double inches, String tank) {
    return MixCase.in("corn", "glyphosate").day(24, stage, inches).tank(tank);
  }

  private static UseBuilder pre() {
    return UseBuilder.of("soybean", BURNDOWN, PREPLANT, PRE)
        .before("", "emergence")
        .traits()
        .rate("0.5-1.0 lb ai/acre")
        .noSoilPh();
  }

  private static Found on(String date, FieldBuilder field, IngredientBuilder active) {
    return () -> CaseBook.of(field).active(active).uses(date, "testactive", HALF);
  }

  private static Found atStage(String stage, int daysLater, UseBuilder... uses) {
    return () -> {
      CaseBook book = CaseBook.of(soybean()).active(active(uses));
      return book.uses(book.dayOfStage(stage).plusDays(daysLater), "testactive", HALF);
    };
  }

  private static Found atHeight(double inches, UseBuilder use) {
    return () -> {
      CaseBook book = CaseBook.of(soybean()).active(active(use));
      return book.uses(book.dayOfHeight(inches), "testactive", HALF);
    };
  }

  /** Last days that differ by state; 12 June is the 35th day after planting. */
  private static MixCase lastDays(int day, Optional<String> state, Cutoff... rows) {
    return MixCase.in("soybean")
        .catalog(Restated.value(STARTER, "clethodim", "use.registration.cutoffs", List.of(rows)))
        .field(f -> state.ifPresentOrElse(f::state, f::stateUnknown))
        .day(day, "V5", 9)
        .tank("clethodim 0.125 ai");
  }

  private static final Cutoff MINNESOTA = new Cutoff(Set.of("MN"), MonthDay.of(6, 12));
  private static final Cutoff IOWA = new Cutoff(Set.of("IA"), MonthDay.of(6, 20));
  private static final Cutoff ALL = new Cutoff(Set.of(), MonthDay.of(6, 30));

  private static RotationRow row(Period wait, OptionalDouble rainMm) {
    return new RotationRow(
        SoilCondition.ALWAYS,
        Set.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        wait,
        rainMm);
  }

  private static IngredientBuilder toCorn(RotationRow... rows) {
    return active(post().noTiming()).rotation("corn", rows);
  }

  private static MixCase cornOn(String date) {
    return soy("fomesafen 0.25 ai").field(f -> f.next("corn", date));
  }

  /**
   * One tank planned for a day, which weather delays in some of ten years: by two in the median.
   */
  private static Supplier<Judgement> planned(
      int day, String tank, String harvest, String nextCorn) {
    return () ->
        MixCase.in("soybean", "glyphosate")
            .field(f -> f.harvest(harvest).next("corn", nextCorn))
            .judgedAsProgram(MixCase.in("soybean", "glyphosate").day(day, "", 0).tank(tank));
  }

  /** Two uses over the crop, of which one lets the second application go out sooner. */
  private static Found again(String second) {
    return () -> {
      CaseBook book =
          CaseBook.of(soybean())
              .active(active(post().repeatDays(14), post().repeatDays(7), post().repeatDays(10)));
      return book.sequence(
          book.pass(0, "2027-06-10", "testactive", HALF), book.pass(1, second, "testactive", HALF));
    };
  }

  private static SeasonCase layer(int startsAfterDays) {
    CaseBook book =
        SeasonCases.soybean(
            SeasonCases.weed("AMAPA", 80, DriverKind.YES, 0),
            SeasonCases.weed("ABUTH", 5, DriverKind.NO, 0));
    SeasonCase s = SeasonCase.of(book);
    return s.pass(
            "2027-05-11",
            book.mix("S-metolachlor", "1.6 lb ai/acre"),
            s.toCome("AMAPA", s.site("S-metolachlor", "AMAPA", 90)))
        .layer("AMAPA", 252 + startsAfterDays, 300);
  }

  private static MixCase residual(double tenDaysIn) {
    return MixCase.in("soybean")
        .day(0, "", 0)
        .weed("AMAPA", 0)
        .sky(Sky.fair().rainOfTenDays(tenDaysIn))
        .tank("S-metolachlor 1.6 ai");
  }

  private static SeasonCase kochia(DriverKind driver, double perM2) {
    CaseBook book =
        SeasonCases.soybean(SeasonCases.weed("KCHSC", perM2, driver, 0))
            .rain("2027-04-10", 1)
            .rain("2027-04-25", 1);
    return SeasonCase.of(book);
  }

  private static SeasonCase kochiaTaken(String date, String active, String rate, double pct) {
    CaseBook book =
        SeasonCases.soybean(SeasonCases.weed("KCHSC", 60, DriverKind.YES, 0))
            .rain("2027-04-10", 1)
            .rain("2027-04-25", 1);
    SeasonCase s = SeasonCase.of(book);
    return s.pass(
        date, book.mix(active, rate), s.standing("KCHSC", 10, 20, s.site(active, "KCHSC", pct)));
  }

  private static SeasonCase kochiaTakenByTwo(String... actives) {
    return takenByTwo(SeasonCases.weed("KCHSC", 60, DriverKind.YES, 0), actives);
  }

  private static SeasonCase resistedKochiaTakenByTwo(String... actives) {
    return takenByTwo(SeasonCases.weed("KCHSC", 60, DriverKind.YES, 0.9, 9), actives);
  }

  private static SeasonCase takenByTwo(WeedPressure kochia, String... actives) {
    CaseBook book = SeasonCases.soybean(kochia).rain("2027-04-10", 1).rain("2027-04-25", 1);
    SeasonCase s = SeasonCase.of(book);
    return s.pass(
        "2027-05-21",
        book.mix(actives),
        s.standing(
            "KCHSC", 10, 20, s.site(actives[0], "KCHSC", 88), s.site(actives[2], "KCHSC", 88)));
  }

  private static List<SaidCase> lastDates() {
    return List.of(
        says(
            "cutoff-date",
            "12 June in Minnesota, the last day",
            lastDays(35, Optional.of("MN"), MINNESOTA, ALL)),
        says(
            "cutoff-date",
            "13 June in Minnesota",
            lastDays(36, Optional.of("mn "), MINNESOTA, ALL),
            "block: Clethodim on soybean ends on 12 Jun 2027; this pass is on 13 Jun 2027."
                + " [13 Jun 2027; 12 Jun 2027] on or before 12 Jun 2027, or another active"),
        says("cutoff-date", "13 June in Nebraska", lastDays(36, Optional.of("NE"), MINNESOTA, ALL)),
        says(
            "cutoff-date",
            "12 June in a state that nobody wrote down",
            lastDays(35, Optional.empty(), MINNESOTA, ALL)),
        says(
            "cutoff-date",
            "13 June in a state that nobody wrote down",
            lastDays(36, Optional.empty(), MINNESOTA, ALL),
            "ask: state of the field, on which the last date of clethodim depends [column"
                + " state of fields.csv]"),
        says(
            "cutoff-date",
            "30 June in a state that nobody wrote down",
            lastDays(53, Optional.empty(), ALL, MINNESOTA),
            "ask: state of the field, on which the last date of clethodim depends [column"
                + " state of fields.csv]"),
        says(
            "cutoff-date",
            "1 July in a state that nobody wrote down",
            lastDays(54, Optional.empty(), MINNESOTA, ALL),
            "block: Clethodim on soybean ends on 30 Jun 2027; this pass is on 1 Jul 2027."
                + " [1 Jul 2027; 30 Jun 2027] on or before 30 Jun 2027, or another active"),
        says(
            "cutoff-date",
            "21 June, last days in two states alone",
            lastDays(44, Optional.empty(), MINNESOTA, IOWA),
            "ask: state of the field, on which the last date of clethodim depends [column"
                + " state of fields.csv]"));
  }

  private static List<SaidCase> harvests() {
    return List.of(
        says(
            "harvest-interval",
            "60 days before harvest",
            soy("clethodim 0.125 ai").field(f -> f.harvest("2027-07-31"))),
        says(
            "harvest-interval",
            "59 days before harvest",
            soy("clethodim 0.125 ai").field(f -> f.harvest("2027-07-30")),
            "block: Clethodim needs 60 days before harvest of soybean; this pass leaves"
                + " 59. [59 days; 60 days] harvest on or after 31 Jul 2027, or an active with a"
                + " shorter interval"),
        says(
            "harvest-interval",
            "on the day of harvest",
            soy("clethodim 0.125 ai").field(f -> f.harvest("2027-06-01")),
            "block: Clethodim needs 60 days before harvest of soybean; this pass leaves 0."
                + " [0 days; 60 days] harvest on or after 31 Jul 2027, or an active with a"
                + " shorter interval"),
        says(
            "harvest-interval",
            "the day after harvest",
            soy("clethodim 0.125 ai").field(f -> f.harvest("2027-05-31"))),
        says(
            "harvest-interval",
            "no day of harvest, over the crop",
            on(
                "2027-06-20",
                FieldBuilder.of("C-1", "soybean", "2027-05-11"),
                active(post().grainDays(60))),
            "note: Testactive: no harvest before 19 Aug 2027 (60 days). [no harvest date;"
                + " 60 days]"),
        says(
            "harvest-interval",
            "no day of harvest and no days to wait",
            on(
                "2027-06-20",
                FieldBuilder.of("C-1", "soybean", "2027-05-11"),
                active(post().grainDays(0)))),
        says(
            "harvest-interval",
            "no day of harvest, before the crop is up",
            on(
                "2027-05-10",
                FieldBuilder.of("C-1", "soybean", "2027-05-11"),
                active(pre().grainDays(60)))),
        says(
            "harvest-interval",
            "days not known, over the crop",
            on("2027-06-20", soybean(), active(post())),
            "ask: days from testactive to harvest of soybean [label, preharvest and"
                + " grazing intervals; then uses.soybean.post.intervals.grain in"
                + " catalog/ingredients/testactive.yaml]"),
        says(
            "harvest-interval",
            "days not known, before the crop is up",
            on("2027-05-10", soybean(), active(pre()))),
        says(
            "harvest-interval",
            "what is taken off is not known",
            on("2027-06-20", soybean().uses(), active(post().grainDays(60))),
            "ask: what is taken off the field (grain, silage, grazing) [column use of"
                + " fields.csv]"),
        says(
            "harvest-interval",
            "silage alone is taken off",
            on("2027-06-20", soybean().uses(Commodity.SILAGE), active(post().grainDays(60)))),
        says(
            "grazing-feed",
            "days to silage not known, before the crop is up",
            on("2027-05-10", soybean().uses(Commodity.SILAGE), active(pre())),
            "ask: days from testactive to silage harvest of soybean [label, preharvest and"
                + " grazing intervals; then uses.soybean.burndown.intervals.silage in"
                + " catalog/ingredients/testactive.yaml]"),
        says(
            "grazing-feed",
            "days to hay, forage, grazing and silage too few",
            on(
                "2027-09-20",
                soybean()
                    .uses(Commodity.HAY, Commodity.FORAGE, Commodity.GRAZING, Commodity.SILAGE),
                active(
                    post()
                        .days(Commodity.HAY, 30)
                        .days(Commodity.FORAGE, 21)
                        .days(Commodity.GRAZING, 12)
                        .days(Commodity.SILAGE, 45))),
            "block: Testactive needs 12 days before grazing of soybean; this pass leaves"
                + " 11. [11 days; 12 days] harvest on or after 2 Oct 2027, or an active with a"
                + " shorter interval",
            "block: Testactive needs 21 days before forage harvest of soybean; this pass"
                + " leaves 11. [11 days; 21 days] harvest on or after 11 Oct 2027, or an active"
                + " with a shorter interval",
            "block: Testactive needs 30 days before haymaking of soybean; this pass leaves"
                + " 11. [11 days; 30 days] harvest on or after 20 Oct 2027, or an active with a"
                + " shorter interval",
            "block: Testactive needs 45 days before silage harvest of soybean; this pass"
                + " leaves 11. [11 days; 45 days] harvest on or after 4 Nov 2027, or an active"
                + " with a shorter interval"),
        says(
            "grazing-feed",
            "grazing refused",
            soy("clethodim 0.125 ai").field(f -> f.uses(Commodity.GRAZING)),
            "block: Clethodim: the label refuses grazing of treated soybean, and the field"
                + " is used for it. [grazing; refused] another active, or grain only"));
  }

  private static List<SaidCase> windows() {
    return List.of(
        says(
            "stage-window",
            "atrazine on corn of 12 in",
            corn("V4", 12, "atrazine 1.0 ai"),
            "block: Atrazine is allowed on corn before 12 in; this pass meets it at 12 in."
                + " [12 in; before 12 in] on or before 31 May 2027, or an active with a later"
                + " window"),
        says(
            "stage-window",
            "mesotrione at V9",
            corn("V9", 29, "mesotrione 0.094 ai"),
            "block: Mesotrione is allowed on corn from emergence through V8; this pass"
                + " meets V9, 29 in tall, on 1 Jun 2027. [V9, 29 in tall, on 1 Jun 2027; from"
                + " emergence through V8] on or before 31 May 2027, or an active with a later"
                + " window"),
        says(
            "stage-window",
            "mesotrione at V8 and 30.1 in",
            corn("V8", 30.1, "mesotrione 0.094 ai"),
            "block: Mesotrione is allowed on corn up to 30 in; this pass meets it at 30.1"
                + " in. [30.1 in; up to 30 in] on or before 31 May 2027, or an active with a"
                + " later window"),
        says(
            "stage-window",
            "mesotrione at V9 and 31 in",
            corn("V9", 31, "mesotrione 0.094 ai"),
            "block: Mesotrione is allowed on corn up to 30 in; this pass meets it at 31"
                + " in. [31 in; up to 30 in] on or before 31 May 2027, or an active with a later"
                + " window"),
        says(
            "stage-window",
            "2,4-D choline at R2",
            MixCase.in("soybean", "2,4-D").day(50, "R2", 20).tank("2,4-D choline 0.95 ae"),
            "block: 2,4-D choline is allowed on soybean from emergence through R1; this"
                + " pass meets R2, 20 in tall, on 27 Jun 2027. [R2, 20 in tall, on 27 Jun 2027;"
                + " from emergence through R1] on or before 26 Jun 2027, or an active with a"
                + " later window"),
        says(
            "stage-window",
            "flumioxazin 5 days after planting, where 3 are the most",
            MixCase.in("soybean").day(5, "", 0).tank("flumioxazin 0.08 ai"),
            "block: Flumioxazin is allowed on soybean through 3 days after planting before"
                + " emergence; this pass comes 5 days after planting, no crop up, on 13 May 2027."
                + " [5 days after planting, no crop up, on 13 May 2027; through 3"
                + " days after planting before emergence] on or before 11 May"
                + " 2027, or an active with a later window"),
        says(
            "stage-window",
            "flumioxazin 3 days after planting",
            MixCase.in("soybean").day(3, "", 0).tank("flumioxazin 0.08 ai")),
        says(
            "stage-window",
            "one leaf below the last stage, as modelled",
            atStage("R1", -1, post().before("emergence", "R1")),
            "warn: Testactive is close to a limit on soybean (from emergence before R1):"
                + " the model expects V8, 15.7 in tall, on 28 Jun 2027; look before spraying."
                + " [V8, 15.7 in tall, on 28 Jun 2027; from emergence before R1] on or before 28"
                + " Jun 2027, or an active with a later window"),
        says(
            "stage-window",
            "on the first stage that is refused, as modelled",
            atStage("R1", 0, post().before("emergence", "R1")),
            "block: Testactive is allowed on soybean from emergence before R1; this pass"
                + " meets R1, 16 in tall, on 29 Jun 2027. [R1, 16 in tall, on 29 Jun 2027; from"
                + " emergence before R1] on or before 28 Jun 2027, or an active with a later"
                + " window"),
        says(
            "stage-window",
            "two stages before it, as modelled",
            atStage("V3", 0, post().before("emergence", "R1"))),
        says(
            "stage-window",
            "the first allowed stage, as modelled",
            atStage("V3", 0, post().through("V3", "R1")),
            "warn: Testactive is close to a limit on soybean (from V3 through R1): the"
                + " model expects V3, 8 in tall, on 7 Jun 2027; look before spraying. [V3, 8 in"
                + " tall, on 7 Jun 2027; from V3 through R1] some days later: the window opens"
                + " on 7 Jun 2027 in the median year"),
        says(
            "stage-window",
            "a stage before the first, as modelled",
            atStage("V2", 0, post().through("V3", "R1")),
            "block: Testactive is allowed on soybean from V3 through R1; this pass meets"
                + " V2, 7 in tall, on 2 Jun 2027. [V2, 7 in tall, on 2 Jun 2027; from V3 through"
                + " R1] on or after 7 Jun 2027"),
        says(
            "stage-window",
            "the last allowed stage, as modelled",
            atStage("V3", 1, post().through("V1", "V3")),
            "warn: Testactive is close to a limit on soybean (from V1 through V3): the"
                + " model expects V3, 8.3 in tall, on 8 Jun 2027; look before spraying. [V3, 8.3"
                + " in tall, on 8 Jun 2027; from V1 through V3] on or before 11 Jun 2027, or an"
                + " active with a later window"),
        says(
            "stage-window",
            "2 days after emergence, from which on it is allowed",
            atStage("emergence", 2, post()),
            "warn: Testactive is close to a limit on soybean (from emergence): the model"
                + " expects VE, 1.8 in tall, on 20 May 2027; look before spraying. [VE, 1.8 in"
                + " tall, on 20 May 2027; from emergence] some days later: the window opens on"
                + " 18 May 2027 in the median year"),
        says(
            "stage-window",
            "2 days after emergence, before which another use allows it",
            atStage("emergence", 2, post(), pre())),
        says(
            "stage-window",
            "the day before emergence, from which on another use allows it",
            atStage("emergence", -1, pre(), post())),
        says("stage-window", "3 days after emergence", atStage("emergence", 3, post())),
        says(
            "stage-window",
            "the day before emergence, where it is allowed until then",
            atStage("emergence", -1, pre()),
            "warn: Testactive is close to a limit on soybean (before emergence): the model"
                + " expects 6 days after planting, no crop up, on 17 May 2027; look before spraying."
                + " [6 days after planting, no crop up, on 17"
                + " May 2027; before emergence] on or before 17 May 2027, or an active with a"
                + " later window"),
        says("stage-window", "3 days before emergence", atStage("emergence", -3, pre())),
        says(
            "stage-window",
            "about 10 in of crop before 12, as modelled",
            atHeight(10.2, post().cropHeight(Limit.below(12 * 2.54))),
            "warn: Testactive is close to a limit on soybean (from emergence, before 12"
                + " in): the model expects V4, 10.4 in tall, on 15 Jun 2027; look before"
                + " spraying. [V4, 10.4 in tall, on 15 Jun 2027; from emergence, before 12 in]"
                + " on or before 18 Jun 2027, or an active with a later window"),
        says(
            "stage-window",
            "about 9 in of crop before 12, as modelled",
            atHeight(8.5, post().cropHeight(Limit.below(12 * 2.54)))),
        says(
            "stage-window",
            "about 9 in of crop from 8 on, as modelled",
            atHeight(8.5, post().cropHeight(Limit.atLeast(8 * 2.54))),
            "warn: Testactive is close to a limit on soybean (from emergence, from 8 in):"
                + " the model expects V3, 8.6 in tall, on 9 Jun 2027; look before spraying. [V3,"
                + " 8.6 in tall, on 9 Jun 2027; from emergence, from 8 in] some days later: the"
                + " window opens on 7 Jun 2027 in the median year"),
        says(
            "stage-window",
            "about 12 in of crop from 8 on, as modelled",
            atHeight(11, post().cropHeight(Limit.atLeast(8 * 2.54)))),
        says(
            "stage-window",
            "about 6 in of crop, allowed above 8 and up to 12",
            atHeight(
                6,
                post()
                    .cropHeight(
                        new Limit(
                            OptionalDouble.of(8 * 2.54),
                            true,
                            OptionalDouble.of(12 * 2.54),
                            false))),
            "block: Testactive is allowed on soybean above 8 in up to 12 in; this pass"
                + " meets it at 6.2 in. [6.2 in; above 8 in up to 12 in] on or after 8 Jun 2027"),
        says(
            "stage-window",
            "14 in of crop, allowed from 8 to before 12",
            atHeight(
                14,
                post()
                    .cropHeight(
                        new Limit(
                            OptionalDouble.of(8 * 2.54),
                            false,
                            OptionalDouble.of(12 * 2.54),
                            true))),
            "block: Testactive is allowed on soybean from 8 in before 12 in; this pass"
                + " meets it at 14 in. [14 in; from 8 in before 12 in] on or before 18 Jun 2027,"
                + " or an active with a later window"),
        says(
            "stage-window",
            "stages not known",
            soy(Restated.without(STARTER, "clethodim", "use.timing"), "clethodim 0.125 ai"),
            "ask: crop stages between which clethodim may go on soybean [label, crop"
                + " stages; then uses.soybean.post.timing in catalog/ingredients/clethodim.yaml]"),
        says(
            "stage-window",
            "height of the crop not known",
            soy(Restated.without(STARTER, "clethodim", "use.cropHeightCm"), "clethodim 0.125 ai"),
            "ask: crop height between which clethodim may go on soybean [label, crop"
                + " stages; then uses.soybean.post.cropHeight in"
                + " catalog/ingredients/clethodim.yaml]"),
        says(
            "stage-window",
            "height of the crop not known, before it is up",
            MixCase.in("soybean")
                .catalog(Restated.without(STARTER, "metribuzin", "use.cropHeightCm"))
                .day(-1, "", 0)
                .tank("metribuzin 0.3 ai")),
        says(
            "stage-window",
            "a stage that the crop is not known to have",
            on("2027-06-20", soybean(), active(post().through("boot", ""))),
            "ask: day on which soybean reaches boot [stages of catalog/crops/soybean.yaml]"),
        says(
            "stage-window",
            "atrazine on a crop that nobody looked at, modelled at 11 in",
            MixCase.in("corn").day(30, "", 0).tank("atrazine 1.0 ai"),
            "warn: Atrazine is close to a limit on corn (from emergence, before 12 in):"
                + " the model expects V4, 10.9 in tall, on 7 Jun 2027; look before spraying."
                + " [V4, 10.9 in tall, on 7 Jun 2027; from emergence, before 12 in] on or before"
                + " 8 Jun 2027, or an active with a later window"),
        says(
            "stage-window",
            "atrazine on a crop that somebody saw at 11 in",
            MixCase.in("corn").day(30, "V4", 11).tank("atrazine 1.0 ai")),
        says(
            "stage-window",
            "2,4-D choline over soybean 50 days after planting, as modelled in ten years",
            MixCase.in("soybean", "2,4-D").day(50, "", 0).tank("2,4-D choline 0.95 ae")),
        says(
            "stage-window",
            "2,4-D choline over soybean 51 days after planting, as modelled in ten years",
            MixCase.in("soybean", "2,4-D").day(51, "", 0).tank("2,4-D choline 0.95 ae")),
        says(
            "stage-window",
            "2,4-D choline over soybean 52 days after planting, as modelled in ten years",
            MixCase.in("soybean", "2,4-D").day(52, "", 0).tank("2,4-D choline 0.95 ae"),
            "warn: 2,4-D choline: in 3 of 10 weather years this pass is outside its window"
                + " on soybean (from emergence through R1). [R1, 16.5 in tall, on 29 Jun 2027;"
                + " from emergence through R1] on or before 30 Jun 2027, or an active with a"
                + " later window"),
        says(
            "stage-window",
            "2,4-D choline over soybean 54 days after planting, as modelled in ten years",
            MixCase.in("soybean", "2,4-D").day(54, "", 0).tank("2,4-D choline 0.95 ae"),
            "warn: 2,4-D choline: in 5 of 10 weather years this pass is outside its window"
                + " on soybean (from emergence through R1). [R1, 18.5 in tall, on 1 Jul 2027;"
                + " from emergence through R1] on or before 30 Jun 2027, or an active with a"
                + " later window"),
        says(
            "stage-window",
            "2,4-D choline over soybean 55 days after planting, as modelled in ten years",
            MixCase.in("soybean", "2,4-D").day(55, "", 0).tank("2,4-D choline 0.95 ae"),
            "block: 2,4-D choline is allowed on soybean from emergence through R1; this"
                + " pass meets R2, 19.4 in tall, on 2 Jul 2027. [R2, 19.4 in tall, on 2 Jul"
                + " 2027; from emergence through R1] on or before 30 Jun 2027, or an active with"
                + " a later window"),
        says(
            "stage-window",
            "2,4-D choline over soybean 56 days after planting, as modelled in ten years",
            MixCase.in("soybean", "2,4-D").day(56, "", 0).tank("2,4-D choline 0.95 ae"),
            "block: 2,4-D choline is allowed on soybean from emergence through R1; this"
                + " pass meets R2, 20.2 in tall, on 3 Jul 2027. [R2, 20.2 in tall, on 3 Jul"
                + " 2027; from emergence through R1] on or before 30 Jun 2027, or an active with"
                + " a later window"));
  }

  private static List<SaidCase> nextCrops() {
    return List.of(
        says(
            "next-crop-interval",
            "corn a day before ten months are over",
            cornOn("2028-03-31"),
            "block: Fomesafen of 1 Jun 2027 needs 10 months before corn, which is to be"
                + " planted on 31 Mar 2028. [31 Mar 2028; 1 Apr 2028] corn planted on or after 1"
                + " Apr 2028, another crop, or another active"),
        says(
            "next-crop-interval",
            "corn on the day",
            cornOn("2028-04-01"),
            "note: Fomesafen: 0 days to spare; do not plant corn before 1 Apr 2028. [1 Apr"
                + " 2028; 1 Apr 2028]"),
        says(
            "next-crop-interval",
            "corn 29 days later",
            cornOn("2028-04-30"),
            "note: Fomesafen: 29 days to spare; do not plant corn before 1 Apr 2028. [30"
                + " Apr 2028; 1 Apr 2028]"),
        says("next-crop-interval", "corn 30 days later", cornOn("2028-05-01")),
        says(
            "next-crop-interval",
            "no next crop and a soil active",
            on("2027-06-20", soybean(), active(post())),
            "ask: the next crop, on which the intervals of what is sprayed depend [column"
                + " nextCrop of fields.csv]"),
        says(
            "next-crop-interval",
            "no date of the next crop",
            on(
                "2027-06-20",
                soybean().nextUndated("corn"),
                toCorn(row(new Period(10, 0), OptionalDouble.empty()))),
            "ask: planting date of the next crop, on which the intervals of what is"
                + " sprayed depend [column nextCropPlantDate of fields.csv]"),
        says(
            "next-crop-interval",
            "no date of the next crop, which may follow at once",
            on(
                "2027-06-20",
                soybean().nextUndated("corn"),
                toCorn(row(new Period(0, 0), OptionalDouble.empty())))),
        says(
            "next-crop-interval",
            "months not known",
            on("2027-06-20", soybean().next("corn", "2028-05-01"), active(post().noTiming())),
            "ask: months from testactive to planting corn [label, rotational crops; then"
                + " rotation.corn in catalog/ingredients/testactive.yaml]"),
        says(
            "next-crop-interval",
            "a crop that is never to follow",
            on(
                "2027-06-20",
                soybean().next("corn", "2028-05-01"),
                toCorn(row(Period.NEVER, OptionalDouble.empty()))),
            "block: Testactive of 20 Jun 2027 needs a field bioassay before corn, which is"
                + " to be planted on 1 May 2028. [1 May 2028; no date] a field bioassay that"
                + " shows no injury, another crop, or another active"),
        says(
            "next-crop-interval",
            "18 months on acid soil alone, and no pH known",
            on(
                "2027-06-20",
                soybean().soilUnknown().next("corn", "2028-05-01"),
                active(post().noTiming())
                    .rotation(
                        "corn",
                        TimingCases.months(
                            LabelCases.when(
                                Set.of(), Optional.empty(), Optional.of(Limit.below(7.5))),
                            10),
                        TimingCases.months(SoilCondition.ALWAYS, 18))),
            "ask: soil facts or rain since the spraying, on which the interval from"
                + " testactive to corn depends [column soilTexture, organicMatterPct and soilPh"
                + " of fields.csv; rain gauge]"),
        says(
            "next-crop-interval",
            "four months once 2 in of rain have fallen, and none falls",
            on(
                "2027-06-20",
                soybean().next("corn", "2028-05-01"),
                toCorn(
                    row(new Period(4, 0), OptionalDouble.of(50.8)),
                    row(new Period(18, 0), OptionalDouble.empty()))),
            "ask: soil facts or rain since the spraying, on which the interval from"
                + " testactive to corn depends [column soilTexture, organicMatterPct and soilPh"
                + " of fields.csv; rain gauge]"),
        says(
            "next-crop-interval",
            "four months once 2 in of rain have fallen, and they fall",
            () ->
                CaseBook.of(soybean().next("corn", "2028-05-01"))
                    .active(
                        toCorn(
                            row(new Period(4, 0), OptionalDouble.of(50.8)),
                            row(new Period(18, 0), OptionalDouble.empty())))
                    .rain("2027-07-01", 2)
                    .uses("2027-06-20", "testactive", HALF)),
        says(
            "next-crop-interval",
            "four months after that rain, to the day",
            () ->
                CaseBook.of(soybean().next("corn", "2027-11-01"))
                    .active(
                        toCorn(
                            row(new Period(4, 0), OptionalDouble.of(50.8)),
                            row(new Period(18, 0), OptionalDouble.empty())))
                    .rain("2027-07-01", 2)
                    .uses("2027-06-20", "testactive", HALF),
            "note: Testactive: 0 days to spare; do not plant corn before 1 Nov 2027. [1"
                + " Nov 2027; 1 Nov 2027]"),
        says(
            "next-crop-interval",
            "four months after that rain less a day",
            () ->
                CaseBook.of(soybean().next("corn", "2027-10-31"))
                    .active(
                        toCorn(
                            row(new Period(4, 0), OptionalDouble.of(50.8)),
                            row(new Period(18, 0), OptionalDouble.empty())))
                    .rain("2027-07-01", 2)
                    .uses("2027-06-20", "testactive", HALF),
            "block: Testactive of 20 Jun 2027 needs 4 months before corn, which is to be"
                + " planted on 31 Oct 2027. [31 Oct 2027; 1 Nov 2027] corn planted on or after 1"
                + " Nov 2027, another crop, or another active"),
        says(
            "next-crop-interval",
            "atrazine on corn in the last season, soybean this one",
            MixCase.in("soybean")
                .applied(-30 - 200, "atrazine 1.0 ai", "corn", 2026, SprayRecord.EMPTY)
                .day(24, "V2", 5)
                .tank("clethodim 0.125 ai"),
            "block: Atrazine of 20 Sep 2026 needs 22 months before soybean, which is to be"
                + " planted on 8 May 2027. [8 May 2027; 20 Jul 2028] soybean planted on or after"
                + " 20 Jul 2028, another crop, or another active"),
        says(
            "next-crop-interval",
            "fomesafen late in the last season, corn this one",
            MixCase.in("corn")
                .applied(-290, "fomesafen 0.25 ai", "soybean", 2026, SprayRecord.EMPTY)
                .day(24, "V4", 9)
                .tank("mesotrione 0.094 ai"),
            "block: Fomesafen of 22 Jul 2026 needs 10 months before corn, which is to be"
                + " planted on 8 May 2027. [8 May 2027; 22 May 2027] corn planted on or after 22"
                + " May 2027, another crop, or another active"),
        says(
            "next-crop-interval",
            "fomesafen ten months before corn, to the day",
            MixCase.in("corn")
                .applied(-304, "fomesafen 0.25 ai", "soybean", 2026, SprayRecord.EMPTY)
                .day(24, "V4", 9)
                .tank("mesotrione 0.094 ai"),
            "note: Fomesafen of 8 Jul 2026: 0 days to spare; do not plant corn before 8"
                + " May 2027. [8 May 2027; 8 May 2027]"),
        says(
            "next-crop-interval",
            "fomesafen eleven months before corn",
            MixCase.in("corn")
                .applied(-334, "fomesafen 0.25 ai", "soybean", 2026, SprayRecord.EMPTY)
                .day(24, "V4", 9)
                .tank("mesotrione 0.094 ai")),
        says(
            "replant-crop",
            "atrazine on corn that failed, then soybean",
            soy("clethodim 0.125 ai")
                .applied(-20, "atrazine 1.0 ai", "corn", 2027, SprayRecord.EMPTY),
            "block: Atrazine of 18 Apr 2027 needs 10 months before soybean, which is to be"
                + " planted on 8 May 2027. [8 May 2027; 18 Feb 2028] soybean planted on or after"
                + " 18 Feb 2028, another crop, or another active"),
        says(
            "replant-crop",
            "atrazine on soybean itself",
            soy("clethodim 0.125 ai")
                .applied(-20, "atrazine 1.0 ai", "soybean", 2027, SprayRecord.EMPTY)),
        says(
            "replant-crop",
            "atrazine on no crop that is named",
            soy("clethodim 0.125 ai")
                .applied(-20, "atrazine 1.0 ai", " ", 2027, SprayRecord.EMPTY)),
        says(
            "replant-crop",
            "mesotrione on corn that failed, then soybean",
            soy("clethodim 0.125 ai")
                .applied(-20, "mesotrione 0.094 ai", "corn", 2027, SprayRecord.EMPTY)));
  }

  private static List<SaidCase> planting() {
    return List.of(
        says(
            "planting-interval",
            "2,4-D choline 29 days before soybean without the trait",
            before(29, "2,4-D choline 0.95 ae"),
            "block: 2,4-D choline at 0.95 lb ae/acre needs 30 days before soybean is"
                + " planted; this pass leaves 29 days. [29 days; 30 days] planting on or after 9"
                + " May 2027"),
        says(
            "planting-interval",
            "2,4-D ester 0.51 lb 10 days before, which 0.5 lb may",
            before(10, "2,4-D ester 0.51 ae"),
            "block: 2,4-D ester at 0.51 lb ae/acre needs 30 days before soybean is"
                + " planted; this pass leaves 10 days. [10 days; 30 days] planting on or after"
                + " 28 May 2027, or at most 0.5 lb ae/acre"),
        says(
            "planting-interval",
            "2,4-D ester 0.51 lb 5 days before, which no rate may",
            before(5, "2,4-D ester 0.51 ae"),
            "block: 2,4-D ester at 0.51 lb ae/acre needs 30 days before soybean is"
                + " planted; this pass leaves 5 days. [5 days; 30 days] planting on or after 2"
                + " Jun 2027"),
        says(
            "planting-interval",
            "days not known",
            on("2027-05-01", soybean(), active(pre())),
            "ask: days from testactive at 0.5 lb ai/acre to planting soybean [label,"
                + " planting intervals; then uses.soybean.burndown.plantingInterval in"
                + " catalog/ingredients/testactive.yaml]"),
        says(
            "planting-interval",
            "days not known of a use after planting alone",
            on(
                "2027-05-11",
                soybean(),
                active(
                    UseBuilder.of("soybean", PRE)
                        .before("", "emergence")
                        .traits()
                        .rate("0.5-1.0 lb ai/acre")
                        .noSoilPh()))),
        says(
            "planting-interval",
            "14 days after an inch of rain, of which 0.6 fell",
            () ->
                CaseBook.of(soybean())
                    .active(active(pre().plantingBand(HALF, 14, 25.4)))
                    .rain("2027-04-27", 0.6)
                    .uses("2027-04-25", "testactive", HALF),
            "block: Testactive at 0.5 lb ai/acre needs 14 days before soybean is planted,"
                + " counted once 1 in of rain has fallen; this pass leaves none. [none; 14 days]"
                + " planting 14 days after 1 in of rain has fallen"),
        says(
            "planting-interval",
            "14 days after an inch of rain, 14 days before planting",
            () ->
                CaseBook.of(soybean())
                    .active(active(pre().plantingBand(HALF, 14, 25.4)))
                    .rain("2027-04-27", 1)
                    .uses("2027-04-25", "testactive", HALF)),
        says(
            "planting-interval",
            "14 days after an inch of rain, 13 days before planting",
            () ->
                CaseBook.of(soybean())
                    .active(active(pre().plantingBand(HALF, 14, 25.4)))
                    .rain("2027-04-28", 1)
                    .uses("2027-04-25", "testactive", HALF),
            "block: Testactive at 0.5 lb ai/acre needs 14 days before soybean is planted,"
                + " counted once 1 in of rain has fallen; this pass leaves 13 days. [13 days; 14"
                + " days] planting on or after 12 May 2027"),
        says(
            "planting-interval",
            "the rain of the day of spraying itself does not count",
            () ->
                CaseBook.of(soybean())
                    .active(active(pre().plantingBand(HALF, 14, 25.4)))
                    .rain("2027-04-25", 1)
                    .uses("2027-04-25", "testactive", HALF),
            "block: Testactive at 0.5 lb ai/acre needs 14 days before soybean is planted,"
                + " counted once 1 in of rain has fallen; this pass leaves none. [none; 14 days]"
                + " planting 14 days after 1 in of rain has fallen"),
        says(
            "planting-interval",
            "on the day of planting, 7 days to wait",
            on("2027-05-11", soybean(), active(pre().plantingDays(7))),
            "block: Testactive at 0.5 lb ai/acre needs 7 days before soybean is planted;"
                + " this pass leaves 0 days. [0 days; 7 days] planting on or after 18 May 2027"),
        says(
            "planting-interval",
            "the day after planting",
            on("2027-05-12", soybean(), active(pre().plantingDays(7))),
            "block: Testactive at 0.5 lb ai/acre needs 7 days before soybean is planted;"
                + " this pass comes after planting. [it is planted; 7 days] an active that needs"
                + " no wait here"),
        says(
            "planting-interval",
            "the day after planting, where no day is asked for",
            on("2027-05-12", soybean(), active(pre().plantingDays(0)))),
        says(
            "planting-interval",
            "14 days after an inch of rain that comes with the planting",
            () ->
                CaseBook.of(soybean())
                    .active(active(pre().plantingBand(HALF, 14, 25.4)))
                    .rain("2027-05-11", 1)
                    .uses("2027-04-25", "testactive", HALF),
            "block: Testactive at 0.5 lb ai/acre needs 14 days before soybean is planted,"
                + " counted once 1 in of rain has fallen; this pass leaves 0 days. [0 days; 14"
                + " days] planting on or after 25 May 2027"));
  }

  private static List<SaidCase> repeats() {
    return List.of(
        says(
            "repeat-interval",
            "twelve days after the first",
            soy("2,4-D choline 0.71 ae").applied(12, "2,4-D choline 0.71 ae")),
        says(
            "repeat-interval",
            "eleven days after the first",
            soy("2,4-D choline 0.71 ae").applied(13, "2,4-D choline 0.71 ae"),
            "block: 2,4-D choline: 11 days after the application of 21 May 2027, where 12"
                + " are needed. [11 days; 12 days] on or after 2 Jun 2027, or another active"),
        says(
            "repeat-interval",
            "days between not known",
            soy(
                    Restated.without(STARTER, "2,4-D choline", "use.repeatDays"),
                    "2,4-D choline 0.71 ae")
                .applied(12, "2,4-D choline 0.71 ae"),
            "ask: least days between two applications of 2,4-D choline [label, minimum"
                + " interval between applications; then uses.soybean.post.repeat in"
                + " catalog/ingredients/2-4-d-choline.yaml]"),
        says(
            "repeat-interval",
            "days between not known, and no earlier spraying",
            soy(
                Restated.without(STARTER, "2,4-D choline", "use.repeatDays"),
                "2,4-D choline 0.71 ae")),
        says(
            "repeat-interval",
            "days between not known, 60 days after a spraying of another season",
            soy(
                    Restated.without(STARTER, "2,4-D choline", "use.repeatDays"),
                    "2,4-D choline 0.71 ae")
                .applied(-36, "2,4-D choline 0.71 ae", "corn", 2026, SprayRecord.EMPTY),
            "ask: least days between two applications of 2,4-D choline [label, minimum"
                + " interval between applications; then uses.soybean.post.repeat in"
                + " catalog/ingredients/2-4-d-choline.yaml]"),
        says(
            "repeat-interval",
            "days between not known, 61 days after a spraying of another season",
            soy(
                    Restated.without(STARTER, "2,4-D choline", "use.repeatDays"),
                    "2,4-D choline 0.71 ae")
                .applied(-37, "2,4-D choline 0.71 ae", "corn", 2026, SprayRecord.EMPTY)),
        says(
            "repeat-interval",
            "six days where uses have 14, 7 and 10",
            again("2027-06-16"),
            "block: Testactive: 6 days after the application of 10 Jun 2027, where 7 are"
                + " needed. [6 days; 7 days] on or after 17 Jun 2027, or another active"),
        says("repeat-interval", "seven days where uses have 14, 7 and 10", again("2027-06-17")));
  }

  private static List<SaidCase> delays() {
    return List.of(
        says(
            "harvest-interval",
            "harvest 60 days after the plan's day, which weather delays by two",
            planned(24, "clethodim 0.125 ai", "2027-07-31", "2028-05-05"),
            "block: Clethodim needs 60 days before harvest of soybean; this pass leaves"
                + " 58. [58 days; 60 days] harvest on or after 2 Aug 2027, or an active with a"
                + " shorter interval"),
        says(
            "harvest-interval",
            "harvest a day before that is over",
            planned(24, "clethodim 0.125 ai", "2027-08-01", "2028-05-05"),
            "block: Clethodim needs 60 days before harvest of soybean; this pass leaves"
                + " 59. [59 days; 60 days] harvest on or after 2 Aug 2027, or an active with a"
                + " shorter interval"),
        says(
            "harvest-interval",
            "harvest on the day, which three years of ten miss",
            planned(24, "clethodim 0.125 ai", "2027-08-02", "2028-05-05"),
            "warn: Clethodim: in 3 of 10 weather years weather delays this pass until"
                + " fewer than the 60 days before harvest are left. [60 days in the median year;"
                + " 60 days] an earlier pass, or a later harvest"),
        says(
            "harvest-interval",
            "harvest a day later, which two years miss at most",
            planned(24, "clethodim 0.125 ai", "2027-08-03", "2028-05-05")),
        says(
            "next-crop-interval",
            "corn a day before ten months after the delayed pass",
            planned(24, "fomesafen 0.25 ai", "2027-10-05", "2028-04-02"),
            "block: Fomesafen of 3 Jun 2027 needs 10 months before corn, which is to be"
                + " planted on 2 Apr 2028. [2 Apr 2028; 3 Apr 2028] corn planted on or after 3"
                + " Apr 2028, another crop, or another active"),
        says(
            "next-crop-interval",
            "corn on the day, which three years of ten miss",
            planned(24, "fomesafen 0.25 ai", "2027-10-05", "2028-04-03"),
            "warn: Fomesafen: in 3 of 10 weather years weather delays this pass until corn"
                + " may no longer be planted on 3 Apr 2028. [3 Apr 2028; 3 Apr 2028 in the"
                + " median year] an earlier pass, corn planted later, or another active"),
        says(
            "next-crop-interval",
            "corn a day later",
            planned(24, "fomesafen 0.25 ai", "2027-10-05", "2028-04-04"),
            "note: Fomesafen: 1 day to spare; do not plant corn before 3 Apr 2028. [4 Apr"
                + " 2028; 3 Apr 2028]"),
        says(
            "planting-interval",
            "ester planned 30 days before planting, a day of it lost to weather",
            planned(-30, "2,4-D ester 0.95 ae", "2027-10-05", "2028-05-05"),
            "block: 2,4-D ester at 0.95 lb ae/acre needs 30 days before soybean is"
                + " planted; this pass leaves 29 days. [29 days; 30 days] planting on or after 9"
                + " May 2027, or at most 0.5 lb ae/acre"),
        says(
            "planting-interval",
            "ester planned 31 days before planting, which three years of ten miss",
            planned(-31, "2,4-D ester 0.95 ae", "2027-10-05", "2028-05-05"),
            "warn: 2,4-D ester: the 30 days to planting soybean are not met in 3 of 10"
                + " weather years. [in 3 of 10 weather years; 30 days] an earlier pass, or"
                + " planting when the days are over"),
        says(
            "planting-interval",
            "ester planned 32 days before planting",
            planned(-32, "2,4-D ester 0.95 ae", "2027-10-05", "2028-05-05"),
            "note: 2,4-D ester: the 30 days to planting soybean are not met in 2 of 10 weather"
                + " years. [in 2 of 10 weather years; 30 days] an earlier pass, or planting when"
                + " the days are over"));
  }

  private static List<SaidCase> weeds() {
    return List.of(
        says(
            "weed-too-tall",
            "2,4-D choline on Palmer amaranth of 6 in",
            soy("2,4-D choline 0.95 ae").weed("AMAPA", 6)),
        says(
            "weed-too-tall",
            "2,4-D choline on Palmer amaranth a hair above 6 in",
            soy("2,4-D choline 0.95 ae").weed("AMAPA", 6.001),
            "warn: Palmer amaranth: 90 % of the plants are up to a little more than 6 in"
                + " tall at this pass; the label of 2,4-D choline says up to 6 in. [a little"
                + " more than 6 in; 6 in] a partner whose label allows larger weeds; they were"
                + " within the height until 31 May 2027"),
        says(
            "weed-too-tall",
            "2,4-D choline on Palmer amaranth of 9 in, once and a half as tall",
            soy("2,4-D choline 0.95 ae").weed("AMAPA", 9),
            "warn: Palmer amaranth: 90 % of the plants are up to 9 in tall at this pass;"
                + " the label of 2,4-D choline says up to 6 in. [9 in; 6 in] a partner whose"
                + " label allows larger weeds; they were within the height until 27 May 2027"),
        says(
            "weed-too-tall",
            "2,4-D choline on Palmer amaranth of 9.1 in",
            soy("2,4-D choline 0.95 ae").weed("AMAPA", 9.1),
            "warn: Palmer amaranth: 90 % of the plants are up to 9.1 in tall at this pass;"
                + " the label of 2,4-D choline says up to 6 in. Expected control by it alone: 70"
                + " %. [9.1 in; 6 in] a partner whose label allows larger weeds; they were within"
                + " the height until 27 May 2027"),
        says(
            "weed-too-tall",
            "height not known",
            soy(
                    Restated.without(STARTER, "2,4-D choline", "use.weedHeights"),
                    "2,4-D choline 0.95 ae")
                .weed("AMAPA", 6),
            "ask: weed height limit of 2,4-D choline in soybean [label, weeds controlled,"
                + " by size; then uses.soybean.post.weedHeight in"
                + " catalog/ingredients/2-4-d-choline.yaml]"),
        says(
            "weed-too-tall",
            "no height on the label",
            soy(Restated.none(STARTER, "2,4-D choline", "use.weedHeights"), "2,4-D choline 0.95 ae")
                .weed("AMAPA", 20)));
  }

  private static List<SaidCase> activation() {
    return List.of(
        says("no-activating-rain", "half an inch in ten days", residual(0.5)),
        says(
            "no-activating-rain",
            "0.49 in in ten days",
            residual(0.49),
            "warn: S-metolachlor needs 0.5 in of rain to work; the next ten days bring"
                + " 0.49 in. [0.49 in; 0.5 in] 0.5 in of irrigation, a rotary hoe after a week,"
                + " or an active that needs less"),
        says(
            "no-activating-rain",
            "0.1 in on a field with a pivot",
            residual(0.1).field(f -> f.irrigated()),
            "note: S-metolachlor needs 0.5 in of rain or irrigation to work; the next ten"
                + " days bring 0.1 in of rain, the rest is the irrigation's. 0.5 in of"
                + " irrigation within 7 days"),
        says(
            "no-activating-rain",
            "no forecast",
            residual(1).sky(Sky.fair().rainUnknown()),
            "note: The soil actives need 0.5 in of rain to work; no forecast is given."),
        says(
            "no-activating-rain",
            "two soil actives, and the one that needs more is named",
            residual(0.1).tank("flumioxazin 0.08 ai"),
            "warn: S-metolachlor needs 0.5 in of rain to work; the next ten days bring 0.1"
                + " in. [0.1 in; 0.5 in] 0.5 in of irrigation, a rotary hoe after a week, or an"
                + " active that needs less"),
        says(
            "no-activating-rain",
            "a layer that starts 7 days after spraying",
            layer(7),
            "note: The layer of this pass starts within 7 days in 1 and within 14 in 1 of"
                + " 1 weather years."),
        says(
            "no-activating-rain",
            "8 days after spraying",
            layer(8),
            "note: The layer of this pass starts within 7 days in 0 and within 14 in 1 of"
                + " 1 weather years."),
        says(
            "no-activating-rain",
            "10 days after spraying",
            layer(10),
            "note: The layer of this pass starts within 7 days in 0 and within 14 in 1 of"
                + " 1 weather years."),
        says(
            "no-activating-rain",
            "11 days after spraying",
            layer(11),
            "warn: The layer of this pass starts within 10 days in 0 of 1 weather years."
                + " [0 of 1 years; 60 % of the years] irrigation after spraying, an earlier"
                + " pass, or an active that needs less rain"),
        says(
            "no-activating-rain",
            "a layer on velvetleaf, no driver, that starts sooner",
            layer(11).layer("ABUTH", 253, 300),
            "warn: The layer of this pass starts within 10 days in 0 of 1 weather years."
                + " [0 of 1 years; 60 % of the years] irrigation after spraying, an earlier"
                + " pass, or an active that needs less rain"));
  }

  private static List<SaidCase> burndowns() {
    return List.of(
        says(
            "burndown-missing",
            "standing kochia and no pass",
            kochia(DriverKind.YES, 60),
            "warn: Kochia stands at planting (60 plants/m² in the median year) and no pass"
                + " takes it through its leaves. [60 plants/m²; none standing] a burndown before"
                + " 11 May 2027, its planting interval kept; or tillage"),
        says(
            "burndown-missing",
            "hardly more than one kochia to the square meter that is no driver",
            kochia(DriverKind.NO, 1.02),
            "warn: Kochia stands at planting (1 plants/m² in the median year) and no pass"
                + " takes it through its leaves. [1 plants/m²; none standing] a burndown before"
                + " 11 May 2027, its planting interval kept; or tillage"),
        says("burndown-missing", "fewer kochia that are no driver", kochia(DriverKind.NO, 0.99)),
        says(
            "burndown-missing",
            "hardly more than a tenth of a kochia that is a driver",
            kochia(DriverKind.YES, 0.102),
            "warn: Kochia stands at planting (0.1 plants/m² in the median year) and no"
                + " pass takes it through its leaves. [0.1 plants/m²; none standing] a burndown"
                + " before 11 May 2027, its planting interval kept; or tillage"),
        says("burndown-missing", "fewer kochia that are a driver", kochia(DriverKind.YES, 0.09)),
        says(
            "burndown-missing",
            "a pass 20 days after planting",
            kochiaTaken("2027-05-31", "glyphosate", "1.13 lb ae/acre", 88),
            "warn: Kochia stands at planting (60 plants/m² in the median year) and the"
                + " first pass that takes it comes 20 days later, when 90 % of the plants are up"
                + " to 20 in tall and the label of glyphosate says up to 12 in. [60 plants/m²;"
                + " none standing] a burndown before 11 May 2027, its planting interval kept; or"
                + " tillage"),
        says(
            "burndown-missing",
            "a pass 10 days after planting on plants of 20 in",
            kochiaTaken("2027-05-21", "glyphosate", "1.13 lb ae/acre", 88),
            "warn: Kochia stands at planting (60 plants/m² in the median year) and the"
                + " first pass that takes it comes 10 days later, when 90 % of the plants are up"
                + " to 20 in tall and the label of glyphosate says up to 12 in. [60 plants/m²;"
                + " none standing] a burndown before 11 May 2027, its planting interval kept; or"
                + " tillage"),
        says(
            "burndown-missing",
            "a pass 10 days after planting by an active that takes few of them",
            kochiaTaken("2027-05-21", "clethodim", "0.125 lb ai/acre", 5),
            "warn: Kochia stands at planting (60 plants/m² in the median year) and no pass"
                + " takes it through its leaves. [60 plants/m²; none standing] a burndown before"
                + " 11 May 2027, its planting interval kept; or tillage"),
        says(
            "burndown-missing",
            "a pass 10 days after planting that takes just half of them",
            kochiaTaken("2027-05-21", "2,4-D choline", "0.95 lb ae/acre", 60)),
        says(
            "burndown-missing",
            "glyphosate with a partner of a lower limit",
            kochiaTakenByTwo("glyphosate", "1.13 lb ae/acre", "2,4-D choline", "0.95 lb ae/acre"),
            "warn: Kochia stands at planting (60 plants/m² in the median year) and the"
                + " first pass that takes it comes 10 days later, when 90 % of the plants are up"
                + " to 20 in tall and the label of glyphosate says up to 12 in. [60 plants/m²;"
                + " none standing] a burndown before 11 May 2027, its planting interval kept; or"
                + " tillage"),
        says(
            "burndown-missing",
            "the same named in the other order",
            kochiaTakenByTwo("2,4-D choline", "0.95 lb ae/acre", "glyphosate", "1.13 lb ae/acre"),
            "warn: Kochia stands at planting (60 plants/m² in the median year) and the"
                + " first pass that takes it comes 10 days later, when 90 % of the plants are up"
                + " to 20 in tall and the label of glyphosate says up to 12 in. [60 plants/m²;"
                + " none standing] a burndown before 11 May 2027, its planting interval kept; or"
                + " tillage"),
        says(
            "burndown-missing",
            "glyphosate with one that does nothing through leaves",
            kochiaTakenByTwo("glyphosate", "1.13 lb ae/acre", "S-metolachlor", "1.0 lb ai/acre"),
            "warn: Kochia stands at planting (60 plants/m² in the median year) and the"
                + " first pass that takes it comes 10 days later, when 90 % of the plants are up"
                + " to 20 in tall and the label of glyphosate says up to 12 in. [60 plants/m²;"
                + " none standing] a burndown before 11 May 2027, its planting interval kept; or"
                + " tillage"),
        says(
            "burndown-missing",
            "glyphosate that is resisted, whose label is not asked then",
            resistedKochiaTakenByTwo(
                "glyphosate", "1.13 lb ae/acre", "fluroxypyr", "0.14 lb ae/acre")));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysAndAsksAllOfIt(SaidCase c) {
    c.holds();
  }
}
