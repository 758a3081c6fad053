package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.outcome.GapSpan;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.WeedOutcome;

/** Layers, gaps and overlaps, counted anew by hand (the examples are ours). */
class LayerFinderTest {
  private static final TraceSet TRACES = Kernels.traces("ND-1");
  private static final WeedId PALMER = WeedId.of("AMAPA");
  private static final int YEARS = TRACES.years().size();

  private static SeasonTrace year(int y) {
    return TRACES.years().get(y);
  }

  /** A gap is of the days on which too little holds, all of them, and tells what comes up in it. */
  @Test
  void everyDayOnWhichTooLittleHoldsIsInAGapAndNoOther() {
    Kernel kernel = Kernels.of("ND-1");
    List<PreparedPass> passes =
        List.of(
            kernel.prepare(
                Sprays.mix("metribuzin", 0.5, "pyroxasulfone", 0.16),
                TRACES.field().plantDate().minusDays(25)));
    int open = 0;
    int held = 0;
    for (int y = 0; y < YEARS; y++) {
      List<GapSpan> gaps = new LayerFinder(kernel, passes).gaps(y, 0);
      SoilDays soil = new SoilDays(passes, y, 0, TRACES.weeds().get(0), kernel.house());
      for (int d = year(y).plantingDay() - 5; d <= year(y).neededUntil(0) + 5; d++) {
        int day = d;
        boolean asked = year(y).plantingDay() <= d && d <= year(y).neededUntil(0);
        boolean tooLittle = asked && soil.control(d) < kernel.house().layerThreshold();
        assertThat(gaps.stream().filter(g -> g.fromDay() <= day && day <= g.toDay()).count())
            .as("day %d of year %d", d, y)
            .isEqualTo(tooLittle ? 1 : 0);
        open += tooLittle ? 1 : 0;
        held += asked && !tooLittle ? 1 : 0;
      }
      for (GapSpan g : gaps) {
        assertThat(g.weed()).isEqualTo(PALMER);
        assertThat(g.emergenceShare()).isCloseTo(share(y, g.fromDay(), g.toDay()), within(1e-12));
      }
    }
    assertThat(open).isPositive();
    assertThat(held).isPositive();
  }

  /** What goes on the leaves alone lays no layer and stands between none. */
  @Test
  void aPassWithoutALayerIsPassedOver() {
    Kernel kernel = Kernels.of("ND-1");
    LayerFinder finder =
        new LayerFinder(
            kernel,
            List.of(
                kernel.prepare(
                    Sprays.mix("metribuzin", 0.5), TRACES.field().plantDate().minusDays(20)),
                kernel.prepare(
                    Sprays.mix("glyphosate", 1.0), TRACES.field().plantDate().minusDays(10)),
                kernel.prepare(
                    Sprays.mix("pyroxasulfone", 0.16), TRACES.field().plantDate().minusDays(2))));
    List<List<LayerSpan>> byYear = finder.layersByWeed().get(0);
    assertThat(byYear).hasSize(YEARS);
    assertThat(byYear.stream().flatMap(List::stream)).extracting(LayerSpan::pass).contains(0, 2);
    assertThat(finder.overlaps(0, byYear))
        .containsExactly(LayerFinder.overlap(TRACES, 0, byYear, 0, 2));
  }

  private static double share(int y, int from, int to) {
    CohortSet cohorts = year(y).cohorts(0);
    double in = 0;
    double all = 0;
    for (int c = 0; c < cohorts.count(); c++) {
      boolean inside = from <= cohorts.emergedOn(c) && cohorts.emergedOn(c) <= to;
      in += inside ? cohorts.perM2(c) : 0;
      all += cohorts.perM2(c);
    }
    return in / all;
  }

  /** Layers of two passes in each year by their days; below zero is a layer that is not there. */
  private static WeedOutcome.LayerOverlap overlap(
      IntUnaryOperator firstEnds, IntUnaryOperator nextStarts) {
    List<List<LayerSpan>> byYear = new ArrayList<>();
    for (int y = 0; y < YEARS; y++) {
      List<LayerSpan> spans = new ArrayList<>();
      if (firstEnds.applyAsInt(y) >= 0) {
        spans.add(
            new LayerSpan(
                0, PALMER, List.of(), firstEnds.applyAsInt(y) - 20, firstEnds.applyAsInt(y)));
      }
      if (nextStarts.applyAsInt(y) >= 0) {
        spans.add(
            new LayerSpan(
                1, PALMER, List.of(), nextStarts.applyAsInt(y), nextStarts.applyAsInt(y) + 20));
      }
      byYear.add(spans);
    }
    return LayerFinder.overlap(TRACES, 0, byYear, 0, 1);
  }

  private static int ends(int y) {
    return year(y).plantingDay() + 25;
  }

  @Test
  void overlapIsFromTheStartOfTheNextToTheEndOfTheFirst() {
    // One day in the first year, one more in each that follows.
    WeedOutcome.LayerOverlap o = overlap(LayerFinderTest::ends, y -> ends(y) - 1 - y);
    assertThat(o.medianDays()).isEqualTo((1 + YEARS) / 2.0);
    assertThat(o.negativeShare()).isZero();
    assertThat(o.canopyShare()).isZero();
    double[] toCome = new double[YEARS];
    for (int y = 0; y < YEARS; y++) {
      toCome[y] = 100 * share(y, ends(y) + 1, year(y).days());
    }
    assertThat(o.stillToComePct()).isCloseTo(Stats.median(toCome), within(1e-9)).isPositive();
  }

  @Test
  void layersThatEndAndStartOnOneDayLeaveNoHole() {
    WeedOutcome.LayerOverlap o = overlap(LayerFinderTest::ends, LayerFinderTest::ends);
    assertThat(o.medianDays()).isZero();
    assertThat(o.negativeShare()).isZero();
  }

  @Test
  void daysBetweenLayersAreAHoleAndSoIsALayerThatNeverStarts() {
    assertThat(overlap(LayerFinderTest::ends, y -> ends(y) + 3).medianDays()).isEqualTo(-3);
    assertThat(overlap(LayerFinderTest::ends, y -> ends(y) + 1).negativeShare()).isEqualTo(1);
    WeedOutcome.LayerOverlap o =
        overlap(LayerFinderTest::ends, y -> y < 3 ? -1 : y < 5 ? ends(y) + 3 : ends(y) - 9);
    assertThat(o.negativeShare()).isCloseTo(5.0 / YEARS, within(1e-12));
    assertThat(o.medianDays()).isEqualTo(9);
  }

  /** Only what both layers are there for counts for the days; a first that is not there is none. */
  @Test
  void aFirstLayerThatIsNotThereLeavesNoHoleBeforeTheNext() {
    WeedOutcome.LayerOverlap o =
        overlap(y -> y < 4 ? -1 : ends(y), y -> y < 4 ? ends(y) : ends(y) - 7);
    assertThat(o.medianDays()).isEqualTo(7);
    assertThat(o.negativeShare()).isZero();
  }

  @Test
  void aLayerThatLastsUntilTheCanopyClosesNeedsNoOther() {
    WeedOutcome.LayerOverlap o =
        overlap(y -> year(y).canopyDay() - (y < 4 ? 1 : 2), y -> year(y).canopyDay() + 5);
    assertThat(o.canopyShare()).isCloseTo(4.0 / YEARS, within(1e-12));
    assertThat(o.negativeShare()).isCloseTo((YEARS - 4.0) / YEARS, within(1e-12));
  }
}
