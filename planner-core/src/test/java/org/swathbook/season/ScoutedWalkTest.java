package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.ScoutedCount;
import org.swathbook.book.ScoutedHeight;
import org.swathbook.book.Scouting;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.outcome.PassSize;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.testing.Fixtures;

/** Walks through a scouted field, worked by hand from the cohorts of the model. */
class ScoutedWalkTest {
  private static final Field ND1 = Fixtures.field("ND-1");
  private static final LocalDate PLANTED = ND1.plantDate();
  private static final LocalDate TODAY = LocalDate.of(2027, 7, 1);
  private static final int VISIT = 25;

  private static Scouting row(
      int daysAfterPlanting, Optional<ScoutedHeight> height, OptionalDouble perM2) {
    return new Scouting(
        PLANTED.plusDays(daysAfterPlanting),
        ND1.id(),
        "",
        Optional.of(WeedId.of("AMAPA")),
        height,
        perM2.isPresent()
            ? Optional.of(new ScoutedCount(perM2.getAsDouble(), OptionalDouble.empty()))
            : Optional.empty(),
        Optional.empty(),
        0);
  }

  private static Scouting counted(double perM2) {
    return row(VISIT, Optional.empty(), OptionalDouble.of(perM2));
  }

  private static Scouting tall(double lowIn, double highIn) {
    return row(
        VISIT,
        Optional.of(ScoutedHeight.range(2.54 * lowIn, 2.54 * highIn)),
        OptionalDouble.empty());
  }

  private static Scouting water(double mm) {
    return new Scouting(
        PLANTED.plusDays(3),
        ND1.id(),
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        mm);
  }

  private static Kernel kernel(Scouting... rows) {
    Book book = Fixtures.book().withScoutings(List.of(rows));
    return Kernel.of(book, TraceBuilder.build(book, ND1, TODAY));
  }

  private static Score walk(Kernel kernel, int... glufosinateAfterPlanting) {
    return kernel.score(
        java.util.Arrays.stream(glufosinateAfterPlanting)
            .mapToObj(
                d -> kernel.prepare(Sprays.mix("glufosinate-ammonium", 0.66), PLANTED.plusDays(d)))
            .toList());
  }

  /** Plants/m² up on the day of the visit, and weighted by competition. */
  private static double[] up(Kernel kernel, int year) {
    SeasonTrace trace = kernel.traces().years().get(year);
    CohortSet cohorts = trace.cohorts(0);
    int day = trace.plantingDay() + VISIT;
    double[] out = new double[2];
    for (int c = 0; c < cohorts.count() && cohorts.emergedOn(c) <= day; c++) {
      out[0] += kernel.cell(year, 0).start[c];
      out[1] += kernel.cell(year, 0).start[c] * kernel.cell(year, 0).weight[c];
    }
    return out;
  }

  @Test
  void withoutAPassTheCountedAndTheLaterOnesAreUntreated() {
    Kernel plain = kernel();
    Kernel seen = kernel(counted(5));
    Score s = walk(seen);
    for (int y = 0; y < s.years(); y++) {
      assertThat(s.controlPct(0, y)).isZero();
      double all = walk(plain).allSurvivorsPerM2(0, y);
      assertThat(s.allSurvivorsPerM2(0, y)).isCloseTo(all - up(plain, y)[0] + 5, within(1e-9));
    }
  }

  /**
   * A spraying of leaves alone before the visit kills K of the model's W; counted are C, later ones
   * are L: control is K/(K + C + L), all weighted.
   */
  @Test
  void whatPassesKilledBeforeACountStandsBesideItWhenUntreated() {
    Kernel plain = kernel();
    Kernel seen = kernel(counted(5));
    Score before = walk(plain, 10);
    Score after = walk(seen, 10);
    int compared = 0;
    for (int y = 0; y < before.years(); y++) {
      SeasonTrace trace = plain.traces().years().get(y);
      double[] up = up(plain, y);
      if (trace.firstSprayDay(trace.plantingDay() + 10) < trace.plantingDay() + VISIT) {
        double w = plain.cell(y, 0).untreatedWhenRated;
        double killed = before.controlPct(0, y) / 100 * w;
        double counted = 5 * up[1] / up[0];
        double later = w - up[1];
        assertThat(after.controlPct(0, y))
            .isCloseTo(100 * killed / (killed + counted + later), within(1e-7));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(5);
  }

  /**
   * A count says how many stand, not what the emergence of the season met: the plants that it
   * replaced met what those that stand in their place have met, through leaves and in the soil.
   */
  @Test
  void whatEmergenceMetIsTheSameHoweverManyWereCounted() {
    PreparedPassOf leaves =
        (kernel, on) -> kernel.made(Sprays.mix("glufosinate-ammonium", 0.66), on);
    PreparedPassOf soil = (kernel, on) -> kernel.made(Sprays.mix("flumioxazin", 0.096), on);
    assertThat(alike(VISIT, leaves, VISIT + 1)).isGreaterThan(5);
    assertThat(alike(EARLY_VISIT, soil, EARLY_VISIT + 1)).isGreaterThan(5);
  }

  /** Days after planting on which what is up is an inch tall at most. */
  private static final int EARLY_VISIT = 6;

  private interface PreparedPassOf {
    PreparedPass on(Kernel kernel, LocalDate date);
  }

  /** Years in which the pass after the count mattered to what was up, the same with and without. */
  private static int alike(int visit, PreparedPassOf pass, int passDay) {
    Kernel plain = kernel();
    Kernel seen = kernel(row(visit, Optional.empty(), OptionalDouble.of(5)));
    LocalDate on = PLANTED.plusDays(passDay);
    Score before = plain.score(List.of(pass.on(plain, on)));
    Score after = seen.score(List.of(pass.on(seen, on)));
    Score none = seen.score(List.of());
    int mattered = 0;
    for (int y = 0; y < before.years(); y++) {
      assertThat(after.exposedShare(0, y)).isCloseTo(before.exposedShare(0, y), within(1e-9));
      assertThat(after.exposedToNothing(0, y))
          .isCloseTo(before.exposedToNothing(0, y), within(1e-9));
      mattered += after.exposedToNothing(0, y) < none.exposedToNothing(0, y) - 0.01 ? 1 : 0;
    }
    return mattered;
  }

  @Test
  void aCountOfNoneLeavesOnlyWhatComesUpLater() {
    Kernel plain = kernel();
    Score s = walk(kernel(counted(0)));
    for (int y = 0; y < s.years(); y++) {
      assertThat(s.allSurvivorsPerM2(0, y))
          .isCloseTo(walk(plain).allSurvivorsPerM2(0, y) - up(plain, y)[0], within(1e-9));
    }
  }

  /** Nine plants of ten are no taller than the top of the range, on the day of the visit. */
  @Test
  void aPassMeetsTheSizesThatWereSeen() {
    for (Scouting seen : List.of(tall(2, 5), tall(4, 12))) {
      Book book = Fixtures.book().withScoutings(List.of(seen));
      TraceSet traces = TraceBuilder.build(book, ND1, TODAY);
      SeasonOutcome outcome =
          SeasonWalk.walk(
              book,
              traces,
              Sprays.program(
                  "ND-1",
                  Sprays.pass(8, Sprays.mix("glufosinate-ammonium", 0.66)),
                  Sprays.pass(VISIT, Sprays.mix("glufosinate-ammonium", 0.66))));
      ScoutedHeight height = seen.height().orElseThrow();
      int met = 0;
      for (int y = 0; y < traces.years().size(); y++) {
        SeasonTrace trace = traces.years().get(y);
        if (trace.firstSprayDay(trace.plantingDay() + VISIT) == trace.plantingDay() + VISIT) {
          PassSize size =
              outcome.years().get(y).sizes().stream()
                  .filter(p -> p.pass() == 1 && p.weed().equals(WeedId.of("AMAPA")))
                  .findFirst()
                  .orElseThrow();
          assertThat(size.p50Cm()).isCloseTo(height.medianCm(), within(1e-6));
          assertThat(size.p90Cm()).isCloseTo(height.highCm(), within(1e-6));
          met++;
        }
      }
      assertThat(met).isPositive();
    }
  }

  @Test
  void tallerSeenWeedsAreControlledLess() {
    double small = walk(kernel(tall(2, 3)), VISIT).controlPct(0);
    double large = walk(kernel(tall(10, 14)), VISIT).controlPct(0);
    assertThat(large).isLessThan(small - 5);
  }

  /** A residual that waits for rain is activated by the pivot, in every year. */
  @Test
  void irrigationActivatesAndHoldsNoSprayerBack() {
    TraceSet dry = kernel().traces();
    TraceSet wet = kernel(water(20)).traces();
    for (int y = 0; y < dry.years().size(); y++) {
      SeasonTrace a = dry.years().get(y);
      SeasonTrace b = wet.years().get(y);
      int day = a.plantingDay() + 3;
      assertThat(b.rainMm(day)).isCloseTo(a.rainMm(day) + 20, within(1e-9));
      assertThat(b.rainMm(day + 1)).isEqualTo(a.rainMm(day + 1));
      for (int d = 0; d < a.days(); d++) {
        assertThat(b.sprayable(d)).isEqualTo(a.sprayable(d));
      }
    }
    int waiting = 0;
    for (int y = 0; y < dry.years().size(); y++) {
      int day = dry.years().get(y).plantingDay() + 3;
      if (sprayedOn(kernel(), y) < day) {
        assertThat(activeFrom(kernel(water(20)), y)).isLessThanOrEqualTo(day);
        waiting += activeFrom(kernel(), y) > day ? 1 : 0;
      }
    }
    assertThat(waiting).isPositive();
  }

  private static PreparedPass layer(Kernel kernel) {
    return kernel.prepare(Sprays.mix("pyroxasulfone", 0.16), PLANTED);
  }

  private static int sprayedOn(Kernel kernel, int year) {
    return layer(kernel).day(year);
  }

  private static int activeFrom(Kernel kernel, int year) {
    PreparedPass pass = layer(kernel);
    return pass.effect().residual(0, year, pass.day(year)).orElseThrow().activeFrom();
  }
}
