package org.swathbook.weather;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/** A forecast hour by hour, in the civil time of its station. */
public final class HourlyForecast {

  /**
   * What is forecast for the hour that begins at a time; empty is not said.
   *
   * @param windFromDegrees clockwise from north
   * @param rainMm of the hour
   */
  public record Hour(
      LocalDateTime time,
      OptionalDouble temperatureC,
      OptionalDouble humidityPct,
      OptionalDouble windMs,
      OptionalDouble gustMs,
      OptionalDouble windFromDegrees,
      OptionalDouble rainMm) {}

  /** Rain of an hour from which on it counts as rain. */
  private static final double RAIN_MM = 0.2;

  private final List<Hour> hours;

  /** Hours in any order, no time twice. */
  public HourlyForecast(List<Hour> hours) {
    this.hours = hours.stream().sorted(Comparator.comparing(Hour::time)).toList();
  }

  public List<Hour> hours() {
    return hours;
  }

  /** The hour in which a time lies. */
  public Optional<Hour> at(LocalDateTime time) {
    return hours.stream()
        .filter(h -> !h.time().isAfter(time) && h.time().plusHours(1).isAfter(time))
        .findFirst();
  }

  /** Highest temperature of a day; empty when none of its hours names one. */
  public OptionalDouble highC(LocalDate day) {
    return hours.stream()
        .filter(h -> h.time().toLocalDate().equals(day))
        .flatMapToDouble(h -> h.temperatureC().stream())
        .max();
  }

  /** Rain of so many hours from a time on; empty when the forecast does not reach so far. */
  public OptionalDouble rainMm(LocalDateTime from, int length) {
    List<Hour> span = span(from, length);
    return span.size() < length || span.stream().anyMatch(h -> h.rainMm().isEmpty())
        ? OptionalDouble.empty()
        : OptionalDouble.of(span.stream().mapToDouble(h -> h.rainMm().orElseThrow()).sum());
  }

  /**
   * Hours from a time to the first hour with rain; to the end of the forecast when there is none.
   */
  public OptionalDouble hoursToRain(LocalDateTime from) {
    double n = 0;
    for (Hour h : span(from, Integer.MAX_VALUE)) {
      if (h.rainMm().isEmpty()) {
        return n > 0 ? OptionalDouble.of(n) : OptionalDouble.empty();
      }
      if (h.rainMm().getAsDouble() >= RAIN_MM) {
        return OptionalDouble.of(n);
      }
      n++;
    }
    return n > 0 ? OptionalDouble.of(n) : OptionalDouble.empty();
  }

  private List<Hour> span(LocalDateTime from, int length) {
    return hours.stream().filter(h -> h.time().plusHours(1).isAfter(from)).limit(length).toList();
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEATHER,
                HourlyForecast.class,
                "rain of a forecast",
                "an hour with at least so much counts as rain",
                "default, ours")
            .with("least", RAIN_MM, "mm"));
  }
}
