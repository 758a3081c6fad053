package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Crop;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.SyntheticWeather;
import org.swathbook.weather.WeatherDay;

/** Worked by hand on corn at 17.5 °F-days a day: 115 to VE, 82 a collar (Nielsen 2019, Purdue). */
class ScoutedStageTest {
  private static final int PLANTED =
      (int) (LocalDate.of(2027, 5, 1).toEpochDay() - LocalDate.of(2026, 9, 1).toEpochDay());

  private static final Crop CORN = Fixtures.corn();
  private static final Crop SOYBEAN = Fixtures.soybean();

  private static final List<WeatherDay> WARM =
      SyntheticWeather.year(
          2027, d -> new WeatherDay(d, 10 + 17.5 / 1.8 + 2, 10 + 17.5 / 1.8 - 2, 5));

  /** Stages by day after planting, 0 the planting day. */
  private static CropClock clock(Crop crop, Map<Integer, String> scouted) {
    TreeMap<Integer, Integer> days = new TreeMap<>();
    scouted.forEach((d, stage) -> days.put(PLANTED + d, place(crop, stage)));
    return new CropClock(crop, WARM, PLANTED, days);
  }

  private static int place(Crop crop, String stage) {
    return crop.findStage(stage).orElseThrow();
  }

  private static double stage(CropClock clock, int day) {
    return clock.stage()[PLANTED + day];
  }

  private static int first(CropClock clock, Crop crop, String stage) {
    return IntStream.range(0, 150)
        .filter(d -> stage(clock, d) >= place(crop, stage))
        .findFirst()
        .orElseThrow();
  }

  /** 16 days bring 280 °F-days, V2; V3 needs 361. From V3 on, 82 °F-days to V4 are 5 days. */
  @Test
  void aCropThatTheModelHasBehindStartsTheStageThatDay() {
    CropClock clock = clock(CORN, Map.of(15, "V3"));

    assertThat(stage(clock(CORN, Map.of()), 15))
        .isBetween(place(CORN, "V2") + 0.0, place(CORN, "V3") - 0.01);
    assertThat(stage(clock, 14)).isEqualTo(stage(clock(CORN, Map.of()), 14));
    assertThat(stage(clock, 15)).isEqualTo(place(CORN, "V3"));
    assertThat(stage(clock, 16)).isCloseTo(place(CORN, "V3") + 17.5 / 82, within(1e-9));
    assertThat(first(clock, CORN, "V4")).isEqualTo(20);
  }

  /** 25 days bring 437 °F-days, V3 (361); with V1 seen, V2 comes the day after, V3 5 days on. */
  @Test
  void aCropThatTheModelHasAheadWaitsOnTheEveOfTheNextStage() {
    CropClock clock = clock(CORN, Map.of(24, "V1"));

    assertThat(stage(clock, 24))
        .isBetween(place(CORN, "V1") + 0.99, Math.nextDown((double) place(CORN, "V2")));
    assertThat(first(clock, CORN, "V2")).isEqualTo(25);
    assertThat(first(clock, CORN, "V3")).isEqualTo(29);
  }

  /** Modelled emergence: 115/17.5, the seventh day. */
  @Test
  void aCropSeenUpBeforeItsModelledEmergenceEmergesThatDay() {
    assertThat(clock(CORN, Map.of()).emergenceDay()).isEqualTo(PLANTED + 6);
    assertThat(clock(CORN, Map.of(3, "VE")).emergenceDay()).isEqualTo(PLANTED + 3);
    assertThat(clock(CORN, Map.of(3, "V1")).emergenceDay()).isEqualTo(PLANTED + 3);
  }

  @Test
  void twoScoutingsWorkInOrderAndTheLaterOneHolds() {
    CropClock both = clock(CORN, Map.of(10, "V1", 15, "V4"));
    assertThat(first(both, CORN, "V1")).isEqualTo(10);
    assertThat(first(both, CORN, "V4")).isEqualTo(15);

    CropClock contrary = clock(CORN, Map.of(15, "V6", 20, "V2"));
    assertThat(first(contrary, CORN, "V3")).isEqualTo(21);
  }

  /** Stages by days after emergence go on by days: from R1 seen to R3 as far as ever. */
  @Test
  void stagesByDaysGoOnByDays() {
    int r1 = SOYBEAN.stages().get(place(SOYBEAN, "R1")).daysAfterEmergence().orElseThrow();
    int r3 = SOYBEAN.stages().get(place(SOYBEAN, "R3")).daysAfterEmergence().orElseThrow();
    int modelled = first(clock(SOYBEAN, Map.of()), SOYBEAN, "R1");

    for (int seen : new int[] {modelled - 10, modelled + 7}) {
      CropClock clock = clock(SOYBEAN, Map.of(seen, "R1"));
      int on = first(clock, SOYBEAN, "R1");
      assertThat(on).isEqualTo(Math.min(seen, modelled));
      int stillR1 = Math.max(seen, modelled);
      assertThat((int) stage(clock, seen)).isEqualTo(place(SOYBEAN, "R1"));
      if (seen < modelled) {
        assertThat(first(clock, SOYBEAN, "R3") - on).isEqualTo(r3 - r1);
      } else {
        assertThat(first(clock, SOYBEAN, "R3")).isGreaterThanOrEqualTo(stillR1);
      }
    }
  }

  @Property(tries = 200)
  void theModelledStageChangesNoBit(@ForAll @IntRange(min = 0, max = 120) int day) {
    for (Crop crop : List.of(CORN, SOYBEAN)) {
      CropClock modelled = clock(crop, Map.of());
      int at = (int) Math.floor(stage(modelled, day));
      if (at >= 0) {
        CropClock seen = clock(crop, Map.of(day, crop.stages().get(at).name()));
        assertThat(seen.stage()).isEqualTo(modelled.stage());
        assertThat(seen.emergenceDay()).isEqualTo(modelled.emergenceDay());
      }
    }
  }

  @Property(tries = 200)
  void aCropNeverGoesBackAndIsAtEveryStageSeen(
      @ForAll @IntRange(min = 0, max = 60) int day,
      @ForAll @IntRange(min = 0, max = 40) int later,
      @ForAll @IntRange(min = 0, max = 12) int stage,
      @ForAll @IntRange(min = 0, max = 8) int more) {
    int first = Math.min(stage, CORN.stages().size() - 1);
    int second = Math.min(stage + more, CORN.stages().size() - 1);
    TreeMap<Integer, Integer> seen = new TreeMap<>();
    seen.put(PLANTED + day, first);
    seen.put(PLANTED + day + 1 + later, second);
    double[] stages = new CropClock(CORN, WARM, PLANTED, seen).stage();
    for (int d = 1; d < stages.length; d++) {
      assertThat(stages[d]).isGreaterThanOrEqualTo(stages[d - 1]);
    }
    seen.forEach((d, s) -> assertThat((int) Math.floor(stages[d])).isEqualTo(s));
  }
}
