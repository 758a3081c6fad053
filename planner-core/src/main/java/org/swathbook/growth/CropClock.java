package org.swathbook.growth;

import java.util.List;
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
    this.stage = new double[days.size()];
    CropDevelopment model = new CropDevelopment(CropDevelopment.Parameters.of(crop, days.size()));
    CropDevelopment.State state = model.before(plantingDay);
    for (int d = 0; d < stage.length; d++) {
      if (d < plantingDay) {
        stage[d] = -1;
        continue;
      }
      state = model.integrate(state, model.rates(days.get(d)));
      stage[d] = model.stage(state);
    }
    this.emergenceDay = state.emergedOn();
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
