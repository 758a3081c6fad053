package org.swathbook.weather;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * One day as the models take it. Rain includes irrigation where the file names it; a trace counts
 * 0.
 *
 * @param windMs mean wind of the day, m/s; empty where the record does not say
 */
public record WeatherDay(
    LocalDate date, double tmaxC, double tminC, double rainMm, OptionalDouble windMs) {

  public WeatherDay {
    if (tmaxC < tminC) {
      throw new IllegalArgumentException("highest temperature below lowest on " + date);
    }
    if (!(rainMm >= 0)) {
      throw new IllegalArgumentException("rain below zero on " + date);
    }
    if (windMs.isPresent() && !(windMs.getAsDouble() >= 0)) {
      throw new IllegalArgumentException("wind below zero on " + date);
    }
  }

  /** A day whose wind is not known. */
  public WeatherDay(LocalDate date, double tmaxC, double tminC, double rainMm) {
    this(date, tmaxC, tminC, rainMm, OptionalDouble.empty());
  }

  /** The same weather on another date. */
  public WeatherDay on(LocalDate other) {
    return new WeatherDay(other, tmaxC, tminC, rainMm, windMs);
  }

  /** The same day with another rain. */
  public WeatherDay withRain(double otherMm) {
    return new WeatherDay(date, tmaxC, tminC, otherMm, windMs);
  }

  /** The same day with more water. */
  public WeatherDay withMoreRain(double mm) {
    return withRain(rainMm + mm);
  }

  public double tmeanC() {
    return (tmaxC + tminC) / 2;
  }
}
