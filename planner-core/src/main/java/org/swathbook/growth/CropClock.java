package org.swathbook.growth;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.catalog.Crop;
import org.swathbook.weather.WeatherDay;

/**
 * The stages of a crop in one weather year. They hang on nothing but the weather, and the ground
 * that a crop covers on its way to closed rows hangs on the day on which they will close: so the
 * crop's year is known before that of soil and weeds.
 */
final class CropClock {
  private final double[] stage;
  private final int emergenceDay;

  CropClock(Crop crop, List<WeatherDay> days, int plantingDay) {
    this(crop, days, plantingDay, new TreeMap<>());
  }

  CropClock(
      Crop crop, List<WeatherDay> days, int plantingDay, SortedMap<Integer, Integer> scouted) {
    this(crop, SeasonHeat.byDay(crop.clock(), days), plantingDay, scouted);
  }

  /**
   * @param heat of the days by the crop's clock
   */
  CropClock(Crop crop, SeasonHeat.ByDay heat, int plantingDay) {
    this(crop, heat, plantingDay, new TreeMap<>());
  }

  /**
   * @param scouted stage that was seen by the end of a day, by day; where two contradict each
   *     other, the later one holds
   */
  private CropClock(
      Crop crop, SeasonHeat.ByDay heat, int plantingDay, SortedMap<Integer, Integer> scouted) {
    this.stage = new double[heat.days()];
    CropDevelopment model = new CropDevelopment(CropDevelopment.Parameters.of(crop, heat.days()));
    CropDevelopment.State state = model.before(plantingDay);
    for (int d = 0; d < stage.length; d++) {
      if (d < plantingDay) {
        stage[d] = -1;
        continue;
      }
      int notPast =
          scouted.isEmpty() ? crop.stages().size() : notPast(scouted, d, crop.stages().size());
      state = model.integrate(state, CropDevelopment.rates(heat.on(d)), notPast);
      Integer seen = scouted.get(d);
      if (seen != null) {
        state = model.seenAt(Math.min(seen, notPast), state);
      }
      stage[d] = model.stage(state);
    }
    this.emergenceDay = state.emergedOn();
  }

  /** The crop is not past the least of the stages that are seen on this day or later. */
  private static int notPast(SortedMap<Integer, Integer> scouted, int day, int none) {
    int least = none;
    for (int stage : scouted.tailMap(day).values()) {
      least = Math.min(least, stage);
    }
    return least;
  }

  /** Running stage number by day, -1 before planting. */
  double[] stage() {
    return stage;
  }

  /** Day on which the emergence stage is reached; the number of days when it is not. */
  int emergenceDay() {
    return emergenceDay;
  }
}
