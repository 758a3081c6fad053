package org.swathbook.testing;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.program.SprayWeather;

/** The fair day of {@link MixCase} with one thing different. */
public final class Skies {
  private Skies() {}

  public static SprayWeather wind(double mph) {
    SprayWeather w = MixCase.fair();
    return new SprayWeather(
        OptionalDouble.of(mph),
        OptionalDouble.empty(),
        w.windFromDegrees(),
        w.temperatureF(),
        w.highF(),
        w.coldestNightF(),
        w.humidityPct(),
        w.inversion(),
        w.hoursToRain(),
        w.rainNext24hIn(),
        w.rainNext48hIn(),
        w.rainNext10dIn());
  }

  public static SprayWeather from(double degrees) {
    SprayWeather w = MixCase.fair();
    return new SprayWeather(
        w.windMph(),
        w.gustMph(),
        OptionalDouble.of(degrees),
        w.temperatureF(),
        w.highF(),
        w.coldestNightF(),
        w.humidityPct(),
        w.inversion(),
        w.hoursToRain(),
        w.rainNext24hIn(),
        w.rainNext48hIn(),
        w.rainNext10dIn());
  }

  /** Forecast high, with a milder hour now. */
  public static SprayWeather high(double highF) {
    SprayWeather w = MixCase.fair();
    return new SprayWeather(
        w.windMph(),
        w.gustMph(),
        w.windFromDegrees(),
        OptionalDouble.of(Math.min(75, highF)),
        OptionalDouble.of(highF),
        w.coldestNightF(),
        w.humidityPct(),
        w.inversion(),
        w.hoursToRain(),
        w.rainNext24hIn(),
        w.rainNext48hIn(),
        w.rainNext10dIn());
  }

  public static SprayWeather inversion(Optional<Boolean> seen) {
    SprayWeather w = MixCase.fair();
    return new SprayWeather(
        OptionalDouble.of(6),
        OptionalDouble.empty(),
        w.windFromDegrees(),
        w.temperatureF(),
        w.highF(),
        w.coldestNightF(),
        w.humidityPct(),
        seen,
        w.hoursToRain(),
        w.rainNext24hIn(),
        w.rainNext48hIn(),
        w.rainNext10dIn());
  }

  /** Rain in so many hours, and so much of it in 24 and in 48 hours. */
  public static SprayWeather rain(double hours, double inches) {
    SprayWeather w = MixCase.fair();
    return new SprayWeather(
        w.windMph(),
        w.gustMph(),
        w.windFromDegrees(),
        w.temperatureF(),
        w.highF(),
        w.coldestNightF(),
        w.humidityPct(),
        w.inversion(),
        OptionalDouble.of(hours),
        OptionalDouble.of(hours <= 24 ? inches : 0),
        OptionalDouble.of(inches),
        OptionalDouble.of(inches));
  }
}
