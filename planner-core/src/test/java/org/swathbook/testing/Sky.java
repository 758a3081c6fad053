package org.swathbook.testing;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.program.SprayWeather;

/** Weather of a day, put together piece by piece; begins as a fair day of which all is known. */
public final class Sky {
  private OptionalDouble wind = OptionalDouble.of(5);
  private OptionalDouble gust = OptionalDouble.of(7);
  private OptionalDouble from = OptionalDouble.of(270);
  private OptionalDouble now = OptionalDouble.of(75);
  private OptionalDouble high = OptionalDouble.of(80);
  private OptionalDouble night = OptionalDouble.of(58);
  private Optional<Boolean> inversion = Optional.of(false);
  private OptionalDouble toRain = OptionalDouble.of(72);
  private OptionalDouble dry = OptionalDouble.empty();
  private OptionalDouble next24 = OptionalDouble.of(0);
  private OptionalDouble next48 = OptionalDouble.of(0);
  private OptionalDouble next10d = OptionalDouble.of(1);

  private OptionalDouble past3d = OptionalDouble.of(66);
  private OptionalDouble next3d = OptionalDouble.of(68);
  private boolean windForecast = false;

  private Sky() {}

  /** 75 °F, 5 mph from the west, no inversion, no rain for three days. */
  public static Sky fair() {
    return new Sky();
  }

  /** A wind without gusts. */
  public Sky wind(double mph) {
    wind = OptionalDouble.of(mph);
    gust = OptionalDouble.empty();
    return this;
  }

  public Sky gusts(double mph) {
    gust = OptionalDouble.of(mph);
    return this;
  }

  public Sky from(double degrees) {
    from = OptionalDouble.of(degrees);
    return this;
  }

  public Sky directionUnknown() {
    from = OptionalDouble.empty();
    return this;
  }

  public Sky windUnknown() {
    wind = OptionalDouble.empty();
    gust = OptionalDouble.empty();
    return this;
  }

  /** Forecast high, with an hour no hotter than 75 °F now. */
  public Sky high(double highF) {
    now = OptionalDouble.of(Math.min(75, highF));
    high = OptionalDouble.of(highF);
    return this;
  }

  public Sky night(double lowF) {
    night = OptionalDouble.of(lowF);
    return this;
  }

  /** Mean temperatures of the three days before, and of the day and the two after it. */
  public Sky means(double pastF, double nextF) {
    past3d = OptionalDouble.of(pastF);
    next3d = OptionalDouble.of(nextF);
    return this;
  }

  public Sky meansUnknown() {
    past3d = OptionalDouble.empty();
    next3d = OptionalDouble.empty();
    return this;
  }

  /** Wind and gusts are a forecast. */
  public Sky forecast() {
    windForecast = true;
    return this;
  }

  /** The temperature now is known, the forecast was not read. */
  public Sky highUnknown() {
    high = OptionalDouble.empty();
    return this;
  }

  public Sky temperatureUnknown() {
    now = OptionalDouble.empty();
    high = OptionalDouble.empty();
    return this;
  }

  public Sky inversion(Optional<Boolean> seen) {
    inversion = seen;
    return this;
  }

  /** Rain in so many hours, and so much of it within two days. */
  public Sky rain(double hours, double inches) {
    toRain = OptionalDouble.of(hours);
    next24 = OptionalDouble.of(hours <= 24 ? inches : 0);
    next48 = OptionalDouble.of(inches);
    next10d = OptionalDouble.of(inches);
    return this;
  }

  /** Inches forecast for the next 24 and 48 hours; NaN where there is no such forecast. */
  public Sky forecastOf(double in24, double in48) {
    next24 = known(in24);
    next48 = known(in48);
    return this;
  }

  private static OptionalDouble known(double x) {
    return Double.isNaN(x) ? OptionalDouble.empty() : OptionalDouble.of(x);
  }

  /** A forecast that ends after so many dry hours. */
  public Sky dryFor(double hours) {
    toRain = OptionalDouble.empty();
    dry = OptionalDouble.of(hours);
    return this;
  }

  public Sky rainOfTenDays(double inches) {
    next10d = OptionalDouble.of(inches);
    return this;
  }

  public Sky rainUnknown() {
    toRain = OptionalDouble.empty();
    next24 = OptionalDouble.empty();
    next48 = OptionalDouble.empty();
    next10d = OptionalDouble.empty();
    return this;
  }

  public SprayWeather weather() {
    return new SprayWeather(
        wind,
        gust,
        from,
        now,
        high,
        night,
        OptionalDouble.of(65),
        inversion,
        toRain,
        dry,
        next24,
        next48,
        next10d,
        past3d,
        next3d,
        windForecast);
  }
}
