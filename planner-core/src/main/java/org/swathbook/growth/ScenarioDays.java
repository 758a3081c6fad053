package org.swathbook.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * The days of one weather year, 1 September to 31 October of the next year. Days of the book's own
 * season that are already observed stand in for those of every year; a day in a long gap of the
 * record is not observed, and each year keeps its own.
 */
final class ScenarioDays {
  private ScenarioDays() {}

  /**
   * @param season the book's season
   * @param observedTo last day of that season to be taken as observed; before 1 September for none
   * @param weather what changes on the days that are not
   */
  static List<WeatherDay> of(
      StationWeather station, int year, int season, LocalDate observedTo, WeatherEdit weather) {
    List<WeatherDay> out = new ArrayList<>();
    List<Boolean> observed = new ArrayList<>();
    LocalDate end = LocalDate.of(year, 10, 31);
    for (LocalDate d = LocalDate.of(year - 1, 9, 1); !d.isAfter(end); d = d.plusDays(1)) {
      LocalDate date = d;
      Optional<WeatherDay> real = observed(station, d, year, season, observedTo);
      observed.add(real.isPresent());
      out.add(real.map(w -> w.on(date)).orElseGet(() -> station.find(date).orElseThrow()));
    }
    return edited(out, observed, weather.edit(year, List.copyOf(out)));
  }

  private static Optional<WeatherDay> observed(
      StationWeather station, LocalDate day, int year, int season, LocalDate observedTo) {
    LocalDate inSeason = day.plusYears((long) season - year);
    return inSeason.isBefore(LocalDate.of(season - 1, 9, 1)) || inSeason.isAfter(observedTo)
        ? Optional.empty()
        : station.observed(inSeason);
  }

  private static List<WeatherDay> edited(
      List<WeatherDay> days, List<Boolean> observed, List<WeatherDay> changed) {
    if (changed.size() != days.size()) {
      throw new IllegalArgumentException("an edited weather year keeps its number of days");
    }
    List<WeatherDay> out = new ArrayList<>();
    for (int d = 0; d < days.size(); d++) {
      if (!changed.get(d).date().equals(days.get(d).date())) {
        throw new IllegalArgumentException("an edited weather year keeps its dates");
      }
      out.add(observed.get(d) ? days.get(d) : changed.get(d));
    }
    return out;
  }
}
