package org.swathbook.testing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/** Weather made to order. */
public final class SyntheticWeather {
  private SyntheticWeather() {}

  /** A day of a mean temperature with 10 °C between night and day. */
  public static WeatherDay day(LocalDate date, double meanC, double rainMm) {
    return new WeatherDay(date, meanC + 5, meanC - 5, rainMm);
  }

  /** All days of one weather year, 1 September to 31 October. */
  public static List<WeatherDay> year(int year, Function<LocalDate, WeatherDay> day) {
    List<WeatherDay> out = new ArrayList<>();
    LocalDate end = LocalDate.of(year, 10, 31);
    for (LocalDate d = LocalDate.of(year - 1, 9, 1); !d.isAfter(end); d = d.plusDays(1)) {
      out.add(day.apply(d));
    }
    return out;
  }

  /** A station with one weather year. */
  public static StationWeather station(String id, int year, Function<LocalDate, WeatherDay> day) {
    return new StationWeather(id, year(year, day));
  }
}
