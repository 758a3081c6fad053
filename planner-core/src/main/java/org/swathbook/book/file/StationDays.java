package org.swathbook.book.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.source.CsvHeader;
import org.swathbook.source.ProblemsException;
import org.swathbook.weather.ObservedDay;

/**
 * Collects the readings of a downloaded file, which may stand in any order, into days. One station
 * a file and one reading a day are held to; a highest temperature below the lowest makes both
 * unknown, since nobody can mend what others measured.
 */
final class StationDays {
  private final Map<LocalDate, Map<Reading, OptionalDouble>> days = new TreeMap<>();
  private @Nullable String station;

  /** A value that may be missing; the text of a cell is never blank here. */
  interface Parser {
    OptionalDouble parse(String text);
  }

  /** Stops the reading when the header lacks a column. */
  static void need(CsvHeader header, String right, String... columns) {
    List<String> missing = Arrays.stream(columns).filter(c -> !header.has(c)).toList();
    if (!missing.isEmpty()) {
      throw ProblemsException.of(
          header.mark(),
          (missing.size() == 1 ? "the column '" : "the columns '")
              + String.join("', '", missing)
              + (missing.size() == 1 ? "' is missing" : "' are missing"),
          right);
    }
  }

  /** Stops the reading at the first row of a second station. */
  void station(Row row, String column) {
    String here = row.text(column);
    if (station == null) {
      station = here;
    } else if (!station.equals(here)) {
      throw ProblemsException.of(
          row.mark(column),
          "the station '" + here + "' stands in the file of '" + station + "'",
          "keep one station a file");
    }
  }

  /** Whether a row of all of a day's readings is the first of its day; another is a problem. */
  boolean isNew(Row row, LocalDate date, String column) {
    if (days.containsKey(date)) {
      again(row, date, column);
      return false;
    }
    return true;
  }

  private static void again(Row row, LocalDate date, String column) {
    row.problem(
        column,
        date + " stands here again",
        "download the file again, or take one of the two rows out");
  }

  /** Reads a cell of a day; a blank one says nothing, but counts as the day's reading too. */
  void read(Row row, LocalDate date, Reading what, String column, Parser parser) {
    OptionalDouble value =
        row.find(
                column,
                text -> {
                  OptionalDouble v = parser.parse(text);
                  return v.isPresent() ? OptionalDouble.of(what.check(v.getAsDouble(), text)) : v;
                },
                "12.5")
            .orElse(OptionalDouble.empty());
    Map<Reading, OptionalDouble> day =
        days.computeIfAbsent(date, d -> new EnumMap<>(Reading.class));
    if (day.put(what, value) != null) {
      again(row, date, column);
    }
  }

  /** Whether any day has a cell of this reading, blank or not. */
  boolean has(Reading what) {
    return days.values().stream().anyMatch(d -> d.containsKey(what));
  }

  List<ObservedDay> inOrder() {
    List<ObservedDay> out = new ArrayList<>(days.size());
    days.forEach((date, readings) -> out.add(day(date, readings)));
    return out;
  }

  private static ObservedDay day(LocalDate date, Map<Reading, OptionalDouble> readings) {
    OptionalDouble tmax = value(readings, Reading.TMAX);
    OptionalDouble tmin = value(readings, Reading.TMIN);
    boolean crossed =
        tmax.isPresent() && tmin.isPresent() && tmax.getAsDouble() < tmin.getAsDouble();
    return new ObservedDay(
        date,
        crossed ? OptionalDouble.empty() : tmax,
        crossed ? OptionalDouble.empty() : tmin,
        value(readings, Reading.RAIN),
        0,
        value(readings, Reading.WIND));
  }

  private static OptionalDouble value(Map<Reading, OptionalDouble> readings, Reading what) {
    return readings.getOrDefault(what, OptionalDouble.empty());
  }
}
