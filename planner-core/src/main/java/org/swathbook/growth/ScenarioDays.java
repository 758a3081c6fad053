package org.swathbook.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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
   */
  static List<WeatherDay> of(StationWeather station, int year, int season, LocalDate observedTo) {
    List<WeatherDay> out = new ArrayList<>();
    LocalDate seasonStart = LocalDate.of(season - 1, 9, 1);
    LocalDate end = LocalDate.of(year, 10, 31);
    for (LocalDate d = LocalDate.of(year - 1, 9, 1); !d.isAfter(end); d = d.plusDays(1)) {
      LocalDate date = d;
      LocalDate inSeason = d.plusYears((long) season - year);
      boolean observed = !inSeason.isBefore(seasonStart) && !inSeason.isAfter(observedTo);
      WeatherDay own = station.find(d).orElseThrow();
      out.add(observed ? station.observed(inSeason).map(w -> w.on(date)).orElse(own) : own);
    }
    return out;
  }
}
