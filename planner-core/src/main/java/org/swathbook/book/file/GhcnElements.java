package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvRow;
import org.swathbook.source.CsvStart;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.weather.ObservedDay;

/**
 * GHCN-Daily with one row an element and no header: station, date, element, value, measurement,
 * quality and source flag, time of observation. Rows may be ordered by element.
 */
final class GhcnElements implements StationReader {
  private static final CsvStart START =
      CsvStart.withoutHeader("station,date,element,value,measurement,quality,source,time");
  private static final CsvColumns COLUMNS =
      CsvColumns.required(
          "station", "date", "element", "value", "measurement", "quality", "source", "time");
  private static final Pattern ROW =
      Pattern.compile("\"?[A-Z0-9_-]{11}\"?,\"?\\d{8}\"?,\"?[A-Z0-9]{4}\"?,.*");

  @Override
  public boolean fits(FirstLines lines) {
    return ROW.matcher(lines.first()).matches();
  }

  @Override
  public List<ObservedDay> read(
      Path book, String file, FirstLines lines, Problems problems, List<String> notes) {
    StationDays days = new StationDays();
    int before = problems.count();
    new Table(file, COLUMNS).read(book, START, problems, csv -> row(csv, days, problems));
    if (problems.count() == before) {
      for (Reading what : List.of(Reading.TMAX, Reading.TMIN, Reading.RAIN)) {
        if (!days.has(what)) {
          problems.add(
              Mark.startOf(file),
              "the file has no " + (what == Reading.RAIN ? "PRCP" : what.name()),
              "take a station that measures TMAX, TMIN and PRCP");
        }
      }
    }
    return days.inOrder();
  }

  private static void row(CsvRow csv, StationDays days, Problems problems) {
    Row row = new Row(csv, problems);
    days.station(row, "station");
    Optional<Reading> what =
        switch (row.text("element")) {
          case "TMAX" -> Optional.of(Reading.TMAX);
          case "TMIN" -> Optional.of(Reading.TMIN);
          case "PRCP" -> Optional.of(Reading.RAIN);
          case "AWND" -> Optional.of(Reading.WIND);
          default -> Optional.empty();
        };
    if (what.isEmpty()) {
      return;
    }
    row.need("date", GhcnElements::date, "20260511")
        .ifPresent(
            date ->
                days.read(
                    row,
                    date,
                    what.get(),
                    "value",
                    text -> GhcnValues.value(text, row.text("measurement"), row.text("quality"))));
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text, DateTimeFormatter.BASIC_ISO_DATE);
    } catch (DateTimeException e) {
      throw new MeasureException("'" + text + "' is no day; write year, month and day as 20260511");
    }
  }
}
