package org.swathbook.growth;

import org.swathbook.catalog.ThermalClock;
import org.swathbook.weather.DegreeDays;
import org.swathbook.weather.WeatherDay;

/** Degree-days of a day by the clock that belongs to a parameter, °C-days. */
public final class ThermalTime {
  private ThermalTime() {}

  /** Without a ceiling heat counts in full; on the average method a ceiling caps the mean. */
  public static double of(ThermalClock clock, WeatherDay day) {
    double base = clock.baseC();
    double ceiling = clock.ceilingC().orElse(Double.POSITIVE_INFINITY);
    return switch (clock.method()) {
      case AVERAGE -> Math.min(ceiling - base, DegreeDays.average(day.tmaxC(), day.tminC(), base));
      case CLAMPED -> DegreeDays.clamped(day.tmaxC(), day.tminC(), base, ceiling);
      case SINGLE_SINE ->
          clock.ceilingC().isPresent()
              ? DegreeDays.singleSine(day.tmaxC(), day.tminC(), base, ceiling)
              : DegreeDays.singleSine(day.tmaxC(), day.tminC(), base);
    };
  }
}
