package org.swathbook.weather;

import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Wet-bulb temperature from air temperature and relative humidity near sea level (Stull 2011,
 * Journal of Applied Meteorology and Climatology 50: 2267–2269); within about 1 °C for 5 to 99 %
 * and -20 to 50 °C.
 */
public final class WetBulb {
  private WetBulb() {}

  /** °C. */
  public static double stull(double airC, double humidityPct) {
    return airC * StrictMath.atan(0.151977 * Math.sqrt(humidityPct + 8.313659))
        + StrictMath.atan(airC + humidityPct)
        - StrictMath.atan(humidityPct - 1.676331)
        + 0.00391838 * StrictMath.pow(humidityPct, 1.5) * StrictMath.atan(0.023101 * humidityPct)
        - 4.686035;
  }

  /** Air less wet bulb, °C: how fast droplets dry. */
  public static double deltaT(double airC, double humidityPct) {
    return airC - stull(airC, humidityPct);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEATHER,
                WetBulb.class,
                "wet bulb",
                "Stull's formula, an arctangent fit",
                "Stull 2011")
            .given("°C, %"));
  }
}
