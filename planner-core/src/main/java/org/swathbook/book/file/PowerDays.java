package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvHeader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.CsvStart;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.Texts;
import org.swathbook.weather.ObservedDay;
import org.swathbook.weather.WindHeight;

/**
 * Daily values of NASA's POWER project: a block of text up to {@code -END HEADER-}, then a table in
 * °C, mm and m/s with -999 for what is missing.
 */
final class PowerDays implements StationReader {
  private static final String BEGIN = "-BEGIN HEADER-";
  private static final String END = "-END HEADER-";
  private static final double MISSING = -999;
  private static final CsvColumns COLUMNS = CsvColumns.required("YEAR").andOthers();
  private static final String RIGHT =
      "download daily values with T2M_MAX, T2M_MIN, PRECTOTCORR and WS2M";

  @Override
  public boolean fits(FirstLines lines) {
    List<String> cells = lines.cells();
    return lines.first().equals(BEGIN)
        || cells.contains("YEAR") && (cells.contains("DOY") || cells.contains("MO"));
  }

  @Override
  public List<ObservedDay> read(
      Path book, String file, FirstLines lines, Problems problems, List<String> notes) {
    OptionalInt end = lines.before(END::equals);
    if (lines.first().equals(BEGIN) && end.isEmpty()) {
      problems.add(
          Mark.startOf(file), "the line '" + END + "' is missing", "download the file again");
      return List.of();
    }
    StationDays days = new StationDays();
    CsvStart start = end.isPresent() ? CsvStart.after(end.getAsInt() + 1) : CsvStart.FIRST_LINE;
    new Table(file, COLUMNS).read(book, start, problems, csv -> row(csv, days, problems));
    return days.inOrder();
  }

  private static void row(CsvRow csv, StationDays days, Problems problems) {
    CsvHeader header = csv.header();
    if (header.has("HR")) {
      throw ProblemsException.of(header.mark(), "the values are hourly, not daily", RIGHT);
    }
    boolean numbered = header.has("DOY");
    if (!numbered) {
      StationDays.need(header, RIGHT, "MO", "DY");
    }
    StationDays.need(header, RIGHT, "T2M_MAX", "T2M_MIN", "PRECTOTCORR");
    Row row = new Row(csv, problems);
    Optional<LocalDate> date = numbered ? YearDays.date(row, "YEAR", "DOY") : calendar(row);
    if (date.isEmpty() || !days.isNew(row, date.get(), numbered ? "DOY" : "DY")) {
      return;
    }
    days.read(row, date.get(), Reading.TMAX, "T2M_MAX", PowerDays::value);
    days.read(row, date.get(), Reading.TMIN, "T2M_MIN", PowerDays::value);
    days.read(row, date.get(), Reading.RAIN, "PRECTOTCORR", PowerDays::value);
    if (header.has("WS2M")) {
      days.read(row, date.get(), Reading.WIND, "WS2M", PowerDays::value);
    } else if (header.has("WS10M")) {
      days.read(row, date.get(), Reading.WIND, "WS10M", PowerDays::fromTenMetres);
    }
  }

  private static OptionalDouble value(String text) {
    double value = Texts.number(text);
    return value == MISSING ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private static OptionalDouble fromTenMetres(String text) {
    OptionalDouble value = value(text);
    return value.isPresent()
        ? OptionalDouble.of(WindHeight.atTwoMetres(value.getAsDouble(), 10))
        : value;
  }

  private static Optional<LocalDate> calendar(Row row) {
    Optional<Integer> year = row.need("YEAR", Parsers.whole(1, 9999), "2026");
    Optional<Integer> month = row.need("MO", Parsers.whole(1, 12), "5");
    Optional<Integer> day = row.need("DY", Parsers.whole(1, 31), "11");
    if (year.isEmpty() || month.isEmpty() || day.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.of(year.get(), month.get(), day.get()));
    } catch (DateTimeException e) {
      row.problem("DY", "the month has no such day", "write a day of the calendar");
      return Optional.empty();
    }
  }
}
