package org.swathbook.growth;

import java.util.List;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropStage;
import org.swathbook.weather.WeatherDay;

/**
 * The stages of a crop in one weather year. Heat counts from the planting day on; a stage by days
 * counts from the day of emergence. Stages are reached in their order, at the end of the day that
 * brings what they need.
 */
final class CropClock {
  private final double[] stage;
  private final int emergenceDay;

  CropClock(Crop crop, List<WeatherDay> days, int plantingDay) {
    List<CropStage> stages = crop.stages();
    int up = crop.findStage(crop.emergenceStage()).orElseThrow();
    this.stage = new double[days.size()];
    int emerged = days.size();
    int reached = -1;
    int sinceDay = plantingDay;
    double sinceHeat = 0;
    double heat = 0;
    for (int d = 0; d < stage.length; d++) {
      if (d < plantingDay) {
        stage[d] = -1;
        continue;
      }
      heat += ThermalTime.of(crop.clock(), days.get(d));
      while (reached + 1 < stages.size() && isReached(stages.get(reached + 1), heat, d, emerged)) {
        reached++;
        sinceDay = d;
        sinceHeat = stages.get(reached).degreeDays().orElse(heat);
        if (reached == up) {
          emerged = d;
        }
      }
      double share =
          reached + 1 < stages.size()
              ? share(stages.get(reached + 1), heat, sinceHeat, d, sinceDay, emerged)
              : 0;
      stage[d] = reached + share;
    }
    this.emergenceDay = emerged;
  }

  private static boolean isReached(CropStage next, double heat, int day, int emerged) {
    return next.degreeDays().isPresent()
        ? heat >= next.degreeDays().getAsDouble()
        : day - emerged >= next.daysAfterEmergence().getAsInt();
  }

  /** Share of the way from the last stage to the next one, 0 to below 1. */
  private static double share(
      CropStage next, double heat, double sinceHeat, int day, int sinceDay, int emerged) {
    double done;
    double whole;
    if (next.degreeDays().isPresent()) {
      done = heat - sinceHeat;
      whole = next.degreeDays().getAsDouble() - sinceHeat;
    } else {
      done = day - sinceDay;
      whole = emerged + next.daysAfterEmergence().getAsInt() - sinceDay;
    }
    return whole > 0 ? Math.min(Math.max(0, done / whole), Math.nextDown(1.0)) : 0;
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
