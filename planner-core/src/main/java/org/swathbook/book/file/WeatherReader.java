package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.weather.GapRule;
import org.swathbook.weather.ObservedDay;
import org.swathbook.weather.StationWeather;

/**
 * Reads the daily weather of one station, {@code weather/ID.csv}: a plain table, or a file as
 * downloaded. The first lines tell which; nothing is guessed from the values. Gaps are filled by
 * {@link GapRule}, and what was filled becomes a note.
 */
final class WeatherReader {
  private static final List<StationReader> LAYOUTS =
      List.of(
          new PowerDays(),
          new DaymetDays(),
          new GhcnColumns(),
          new GhcnElements(),
          new PlainDays());

  /** Longer than any record of daily weather; beyond it a date is mistyped. */
  private static final int MOST_YEARS = 300;

  private WeatherReader() {}

  /** Weather by station, of those with which nothing is wrong. */
  static Map<String, StationWeather> read(
      Path book, List<String> stations, Problems problems, List<String> notes) {
    Map<String, StationWeather> out = new TreeMap<>();
    for (String station : stations) {
      read(book, station, problems, notes).ifPresent(w -> out.put(station, w));
    }
    return out;
  }

  /** The station's weather, empty with problems when something is wrong with it. */
  static Optional<StationWeather> read(
      Path book, String station, Problems problems, List<String> notes) {
    String file = file(station);
    int before = problems.count();
    List<ObservedDay> rows = rows(book, station, problems, notes);
    if (problems.count() > before) {
      return Optional.empty();
    }
    if (rows.isEmpty()) {
      problems.add(
          Mark.startOf(file),
          "the station has no day of weather",
          "write a row for every day, from the first to the last");
      return Optional.empty();
    }
    ObservedDay first = rows.get(0);
    ObservedDay last = rows.get(rows.size() - 1);
    if (ChronoUnit.YEARS.between(first.date(), last.date()) >= MOST_YEARS) {
      problems.add(
          Mark.startOf(file),
          "the days run from " + first.date() + " to " + last.date(),
          "mend the date that is wrong");
      return Optional.empty();
    }
    StationWeather weather = GapRule.fill(station, rows);
    if (weather.scenarioYears().isEmpty()) {
      problems.add(
          Mark.startOf(file), GapWords.noYear(weather), "take a longer record, or a fuller one");
      return Optional.empty();
    }
    notes.addAll(GapWords.notes(file, rows, weather));
    return Optional.of(weather);
  }

  /** What the file says of each day, in order of date. */
  static List<ObservedDay> rows(Path book, String station, Problems problems, List<String> notes) {
    String file = file(station);
    try {
      FirstLines lines =
          FirstLines.of(book, file, "write one that starts with 'date,tmax_f,tmin_f,rain_in'");
      Optional<StationReader> layout = LAYOUTS.stream().filter(l -> l.fits(lines)).findFirst();
      if (layout.isPresent()) {
        return layout.get().read(book, file, lines, problems, notes);
      }
      problems.add(
          Mark.startOf(file),
          "the first lines are of no layout of weather that is known here",
          "start a table with 'date,tmax_f,tmin_f,rain_in', or put in a daily CSV file as"
              + " downloaded from GHCN-Daily, NASA POWER or Daymet");
    } catch (ProblemsException e) {
      problems.addAll(e.problems());
    }
    return List.of();
  }

  private static String file(String station) {
    return "weather/" + station + ".csv";
  }
}
