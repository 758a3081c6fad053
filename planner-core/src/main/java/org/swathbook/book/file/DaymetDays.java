package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvRow;
import org.swathbook.source.CsvStart;
import org.swathbook.source.Problems;
import org.swathbook.source.Texts;
import org.swathbook.weather.ObservedDay;

/**
 * Daymet values of one place: some lines on it, then a table by year and day of the year, in °C and
 * mm. Every year has 365 days there: a leap year keeps its 29 February and ends on 30 December. No
 * wind. Source: Daymet's description at the Oak Ridge National Laboratory, from memory.
 */
final class DaymetDays implements StationReader {
  private static final String HEADER = "year,yday";
  private static final String TMAX = "tmax (deg c)";
  private static final String TMIN = "tmin (deg c)";
  private static final String RAIN = "prcp (mm/day)";
  private static final CsvColumns COLUMNS = CsvColumns.required("year", "yday").andOthers();

  @Override
  public boolean fits(FirstLines lines) {
    return lines.before(l -> l.startsWith(HEADER)).isPresent();
  }

  @Override
  public List<ObservedDay> read(
      Path book, String file, FirstLines lines, Problems problems, List<String> notes) {
    StationDays days = new StationDays();
    CsvStart start = CsvStart.after(lines.before(l -> l.startsWith(HEADER)).orElseThrow());
    new Table(file, COLUMNS).read(book, start, problems, csv -> row(csv, days, problems));
    return days.inOrder();
  }

  private static void row(CsvRow csv, StationDays days, Problems problems) {
    StationDays.need(csv.header(), "download the file with prcp, tmax and tmin", RAIN, TMAX, TMIN);
    Row row = new Row(csv, problems);
    Optional<LocalDate> date = YearDays.date(row, "year", "yday");
    if (date.isPresent() && days.isNew(row, date.get(), "yday")) {
      days.read(row, date.get(), Reading.TMAX, TMAX, DaymetDays::value);
      days.read(row, date.get(), Reading.TMIN, TMIN, DaymetDays::value);
      days.read(row, date.get(), Reading.RAIN, RAIN, DaymetDays::value);
    }
  }

  private static OptionalDouble value(String text) {
    double value = Texts.number(text);
    // What Daymet writes for a place without data.
    return value == -9999 ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
