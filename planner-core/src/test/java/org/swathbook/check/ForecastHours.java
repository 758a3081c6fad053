package org.swathbook.check;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.swathbook.measure.Unit;
import org.swathbook.weather.HourlyForecast;
import org.swathbook.weather.HourlyForecast.Hour;

/** Forecasts for tests: fair hours from a midnight on, some of them changed. */
final class ForecastHours {
  private final List<Hour> hours = new ArrayList<>();

  /** 75 °F, 6 mph from the west, gusts of 8 mph, dry. */
  static ForecastHours fair(String midnight, int count) {
    ForecastHours out = new ForecastHours();
    LocalDateTime start = LocalDateTime.parse(midnight + "T00:00");
    for (int i = 0; i < count; i++) {
      out.hours.add(
          new Hour(
              start.plusHours(i),
              OptionalDouble.of(Unit.FAHRENHEIT.toSi(75)),
              OptionalDouble.of(60),
              mph(6),
              mph(8),
              OptionalDouble.of(270),
              OptionalDouble.of(0)));
    }
    return out;
  }

  static OptionalDouble mph(double value) {
    return OptionalDouble.of(Unit.MILE_PER_HOUR.toSi(value));
  }

  private ForecastHours change(int from, int to, UnaryOperator<Hour> change) {
    for (int i = from; i < to; i++) {
      hours.set(i, change.apply(hours.get(i)));
    }
    return this;
  }

  /** From the hour numbered so up to another. */
  ForecastHours wind(int from, int to, OptionalDouble windMs) {
    return change(
        from,
        to,
        h ->
            new Hour(
                h.time(),
                h.temperatureC(),
                h.humidityPct(),
                windMs,
                windMs,
                h.windFromDegrees(),
                h.rainMm()));
  }

  ForecastHours rain(int from, int to, OptionalDouble mm) {
    return change(
        from,
        to,
        h ->
            new Hour(
                h.time(),
                h.temperatureC(),
                h.humidityPct(),
                h.windMs(),
                h.gustMs(),
                h.windFromDegrees(),
                mm));
  }

  ForecastHours degreesF(int from, int to, double f) {
    return change(
        from,
        to,
        h ->
            new Hour(
                h.time(),
                OptionalDouble.of(Unit.FAHRENHEIT.toSi(f)),
                h.humidityPct(),
                h.windMs(),
                h.gustMs(),
                h.windFromDegrees(),
                h.rainMm()));
  }

  HourlyForecast build() {
    return new HourlyForecast(hours);
  }
}
