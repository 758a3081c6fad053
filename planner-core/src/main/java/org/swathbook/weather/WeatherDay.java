package org.swathbook.weather;

import java.time.LocalDate;

/** One observed day. Rain includes irrigation where the file names it; a trace counts 0. */
public record WeatherDay(LocalDate date, double tmaxC, double tminC, double rainMm) {

  public WeatherDay {
    if (tmaxC < tminC) {
      throw new IllegalArgumentException("highest temperature below lowest on " + date);
    }
    if (!(rainMm >= 0)) {
      throw new IllegalArgumentException("rain below zero on " + date);
    }
  }

  /** The same day with more water. */
  public WeatherDay withMoreRain(double mm) {
    return new WeatherDay(date, tmaxC, tminC, rainMm + mm);
  }

  public double tmeanC() {
    return (tmaxC + tminC) / 2;
  }
}
