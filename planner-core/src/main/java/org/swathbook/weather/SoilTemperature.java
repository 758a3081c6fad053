package org.swathbook.weather;

import java.util.List;

/**
 * Daily mean temperature of bare topsoil, which follows the air with a lag: {@code Ts(J) = Ts(J-1)
 * + 0.25 (Ta(J) - Ts(J-1))} (after Zheng, Hunt and Running 1993, Climate Research 2: 183–191; the
 * daily form from memory).
 */
public final class SoilTemperature {
  /** Share of the difference to the air that a day takes off. */
  public static final double SHARE_PER_DAY = 0.25;

  private SoilTemperature() {}

  /** °C for each day of the record. The first day starts at its air mean. */
  public static double[] of(List<WeatherDay> days) {
    double[] soil = new double[days.size()];
    for (int d = 0; d < soil.length; d++) {
      double air = days.get(d).tmeanC();
      soil[d] = d == 0 ? air : soil[d - 1] + SHARE_PER_DAY * (air - soil[d - 1]);
    }
    return soil;
  }
}
