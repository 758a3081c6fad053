package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * Days since a pass by what they are worth to the herbicide. The days of {@link SiteTimeline} hold
 * for warm growing weather, and cool weather up to doubles them (from memory): a day whose mean is
 * at or above 20 °C counts whole, one at or below 10 °C half, those between by the line from one to
 * the other (both temperatures default, ours). A day that the station has no record of counts
 * whole, so that what is not known moves nothing.
 */
final class WarmDays {
  private static final double WARM_C = 20;
  private static final double COOL_C = 10;
  private static final double LEAST = 0.5;

  private final LocalDate sprayed;
  private final Optional<StationWeather> station;

  private WarmDays(LocalDate sprayed, Optional<StationWeather> station) {
    this.sprayed = sprayed;
    this.station = station;
  }

  static WarmDays since(LocalDate sprayed, Book book, Field field) {
    return new WarmDays(sprayed, Optional.ofNullable(book.stations().get(field.station())));
  }

  /** First day on which the days after the pass are worth so many warm ones. */
  LocalDate worth(int days) {
    LocalDate day = sprayed;
    double sum = 0;
    while (sum < days - 1e-9) {
      day = day.plusDays(1);
      sum += on(day).map(WarmDays::share).orElse(1.0);
    }
    return day;
  }

  /** What the days from the pass to a look were worth. */
  WeatherSince until(LocalDate seen) {
    int days = 0;
    int known = 0;
    double warm = 0;
    for (LocalDate d = sprayed.plusDays(1); !d.isAfter(seen); d = d.plusDays(1)) {
      Optional<WeatherDay> on = on(d);
      days++;
      known += on.isPresent() ? 1 : 0;
      warm += on.map(WarmDays::share).orElse(1.0);
    }
    return new WeatherSince(days, known, warm);
  }

  private Optional<WeatherDay> on(LocalDate day) {
    return station.flatMap(s -> s.observed(day));
  }

  static double share(WeatherDay day) {
    double between = (day.tmeanC() - COOL_C) / (WARM_C - COOL_C);
    return LEAST + (1 - LEAST) * Math.min(1, Math.max(0, between));
  }
}
