package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.loss.Seedbank;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.testing.Fixtures;

/** What is told of a weed is of all years: means, medians and worst years, taken anew by hand. */
class YearsOfAWeedTest {
  private static final double M2_PER_ACRE = 4046.8564224;
  private static final WeedId PALMER = WeedId.of("AMAPA");
  private static final Kernel KERNEL = Kernels.of("ND-1");
  private static final TraceSet TRACES = KERNEL.traces();
  private static final int YEARS = TRACES.years().size();

  private final SeasonOutcome season =
      SeasonWalk.walk(
          Fixtures.book(),
          KERNEL,
          Sprays.program(
              "ND-1",
              Sprays.pass(-2, Sprays.mix("metribuzin", 0.5)),
              Sprays.pass(25, Sprays.mix("glufosinate-ammonium", 0.5))));
  private final WeedOutcome weed = season.weed(PALMER);
  private final Score score =
      KERNEL.score(
          List.of(
              KERNEL.prepare(
                  Sprays.mix("metribuzin", 0.5), TRACES.field().plantDate().minusDays(2)),
              KERNEL.prepare(
                  Sprays.mix("glufosinate-ammonium", 0.5),
                  TRACES.field().plantDate().plusDays(25))));

  private static double[] byYear(IntToDoubleFunction of) {
    return IntStream.range(0, YEARS).mapToDouble(of).toArray();
  }

  private static double mean(IntToDoubleFunction of) {
    return Arrays.stream(byYear(of)).average().orElseThrow();
  }

  private static double ranked(IntToDoubleFunction of, int fromBelow) {
    double[] sorted = byYear(of);
    Arrays.sort(sorted);
    return sorted[fromBelow];
  }

  @Test
  void plantsAndSeedsAreMeans() {
    assertThat(TRACES.weeds().get(0).weed().id()).isEqualTo(PALMER);
    assertThat(weed.survivorsPerAcre())
        .isCloseTo(mean(y -> score.survivorsPerM2(0, y)) * M2_PER_ACRE, within(1e-6))
        .isPositive();
    assertThat(weed.allSurvivorsPerAcre())
        .isCloseTo(mean(y -> score.allSurvivorsPerM2(0, y)) * M2_PER_ACRE, within(1e-6))
        .isGreaterThan(weed.survivorsPerAcre());
    assertThat(weed.seedReturnPerM2())
        .isCloseTo(mean(y -> score.seedReturnPerM2(0, y)), within(1e-9))
        .isPositive();
    assertThat(weed.seedbankFactor())
        .isCloseTo(
            mean(
                y ->
                    Seedbank.factor(
                        TRACES.weeds().get(0).weed().seed(),
                        score.seedReturnPerM2(0, y),
                        TRACES.years().get(y).cohorts(0).totalPerM2())),
            within(1e-9))
        .isPositive();
  }

  @Test
  void controlIsTheMeanAndTheWorstYearTheLeast() {
    assertThat(weed.controlPct()).isCloseTo(mean(y -> score.controlPct(0, y)), within(1e-9));
    assertThat(weed.worstYearControlPct())
        .isEqualTo(ranked(y -> score.controlPct(0, y), 0))
        .isPositive()
        .isLessThan(weed.controlPct());
  }

  /** Of ten years the sixth from below, and the second from above. */
  @Test
  void exposureIsOfTheMedianYearAndOfTheWorstFifth() {
    assertThat(YEARS).isEqualTo(10);
    assertThat(weed.exposedPct())
        .isCloseTo(100 * ranked(y -> score.exposedShare(0, y), 5), within(1e-9))
        .isPositive();
    assertThat(weed.exposedWorstFifthPct())
        .isCloseTo(100 * ranked(y -> score.exposedShare(0, y), 8), within(1e-9))
        .isGreaterThan(weed.exposedPct());
  }
}
