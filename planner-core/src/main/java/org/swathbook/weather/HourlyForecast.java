package org.swathbook.weather;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * A forecast hour by hour, in the civil time of its station. Hours that are not there are not
 * known: nothing is summed or called dry across them. The hour that a clock skips in spring is such
 * a hole.
 */
public final class HourlyForecast {

  /**
   * What is forecast for the hour that begins at a time; empty is not said.
   *
   * @param time a full hour
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
      OptionalDouble rainMm) {

    public Hour {
      if (!time.equals(time.truncatedTo(ChronoUnit.HOURS))) {
        throw new IllegalArgumentException(time + " is no full hour");
      }
    }
  }

  /** Rain of an hour from which on it counts as rain. */
  private static final double RAIN_MM = 0.2;

  private final NavigableMap<LocalDateTime, Hour> hours = new TreeMap<>();

  /**
   * Hours in any order.
   *
   * @throws IllegalArgumentException when two have the same time
   */
  public HourlyForecast(List<Hour> hours) {
    for (Hour h : hours) {
      if (this.hours.put(h.time(), h) != null) {
        throw new IllegalArgumentException(h.time() + " is there twice");
      }
    }
  }

  /** In order of time. */
  public List<Hour> hours() {
    return List.copyOf(hours.values());
  }

  /** The hour in which a time lies. */
  public Optional<Hour> at(LocalDateTime time) {
    return Optional.ofNullable(hours.get(time.truncatedTo(ChronoUnit.HOURS)));
  }

  /** Highest temperature of those hours of a day that name one; empty when none does. */
  public OptionalDouble highC(LocalDate day) {
    return hours.subMap(day.atStartOfDay(), day.plusDays(1).atStartOfDay()).values().stream()
        .flatMapToDouble(h -> h.temperatureC().stream())
        .max();
  }

  /**
   * Mean of the highest and lowest temperature of a day; empty when one of its hours names none.
   */
  public OptionalDouble meanC(LocalDate day) {
    DoubleSummaryStatistics all =
        hours.subMap(day.atStartOfDay(), day.plusDays(1).atStartOfDay()).values().stream()
            .flatMapToDouble(h -> h.temperatureC().stream())
            .summaryStatistics();
    return all.getCount() == Duration.ofDays(1).toHours()
        ? OptionalDouble.of((all.getMin() + all.getMax()) / 2)
        : OptionalDouble.empty();
  }

  /**
   * Rain from a time on for so many hours; an hour that lies partly in them counts whole. Empty
   * when the rain of one of them is not known.
   */
  public OptionalDouble rainMm(LocalDateTime from, int length) {
    LocalDateTime end = from.plusHours(length);
    double sum = 0;
    for (LocalDateTime t = from.truncatedTo(ChronoUnit.HOURS);
        t.isBefore(end);
        t = t.plusHours(1)) {
      OptionalDouble rain = rainOf(t);
      if (rain.isEmpty()) {
        return OptionalDouble.empty();
      }
      sum += rain.getAsDouble();
    }
    return OptionalDouble.of(sum);
  }

  /**
   * Hours from a time to the beginning of the first hour with rain, 0 inside of one; empty when
   * none comes before the forecast ends or has a hole.
   */
  public OptionalDouble hoursToRain(LocalDateTime from) {
    LocalDateTime end = endOfDry(from);
    return rainOf(end).isPresent() ? OptionalDouble.of(hours(from, end)) : OptionalDouble.empty();
  }

  /** Hours from a time on that are known to be dry; empty when the first is not known. */
  public OptionalDouble dryHours(LocalDateTime from) {
    return rainOf(from.truncatedTo(ChronoUnit.HOURS)).isPresent()
        ? OptionalDouble.of(hours(from, endOfDry(from)))
        : OptionalDouble.empty();
  }

  /** The first hour from a time on with rain, or of which nothing is known. */
  private LocalDateTime endOfDry(LocalDateTime from) {
    LocalDateTime t = from.truncatedTo(ChronoUnit.HOURS);
    OptionalDouble rain = rainOf(t);
    while (rain.isPresent() && rain.getAsDouble() < RAIN_MM) {
      t = t.plusHours(1);
      rain = rainOf(t);
    }
    return t;
  }

  private static double hours(LocalDateTime from, LocalDateTime to) {
    return Math.max(0, Duration.between(from, to).toSeconds() / 3600.0);
  }

  private OptionalDouble rainOf(LocalDateTime fullHour) {
    Hour hour = hours.get(fullHour);
    return hour == null ? OptionalDouble.empty() : hour.rainMm();
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
