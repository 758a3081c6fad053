package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;
import org.swathbook.source.Texts;
import org.swathbook.weather.ObservedDay;

/**
 * GHCN-Daily with one row a day: a column an element, and beside it one of attributes, {@code
 * measurement flag,quality flag,source flag}.
 */
final class GhcnColumns implements StationReader {
  private static final CsvColumns COLUMNS = CsvColumns.required("STATION", "DATE").andOthers();
  private static final String RIGHT =
      "take a station that measures TMAX, TMIN and PRCP, and its file with the attributes";

  @Override
  public boolean fits(FirstLines lines) {
    return lines.cells().containsAll(List.of("STATION", "DATE"));
  }

  @Override
  public List<ObservedDay> read(
      Path book, String file, FirstLines lines, Problems problems, List<String> notes) {
    StationDays days = new StationDays();
    new Table(file, COLUMNS).read(book, problems, csv -> row(csv, days, problems));
    return days.inOrder();
  }

  private static void row(CsvRow csv, StationDays days, Problems problems) {
    StationDays.need(
        csv.header(),
        RIGHT,
        "TMAX",
        "TMAX_ATTRIBUTES",
        "TMIN",
        "TMIN_ATTRIBUTES",
        "PRCP",
        "PRCP_ATTRIBUTES");
    Row row = new Row(csv, problems);
    days.station(row, "STATION");
    Optional<LocalDate> date = row.need("DATE", Texts::date, "2026-05-11");
    if (date.isPresent() && days.isNew(row, date.get(), "DATE")) {
      element(days, row, date.get(), Reading.TMAX, "TMAX");
      element(days, row, date.get(), Reading.TMIN, "TMIN");
      element(days, row, date.get(), Reading.RAIN, "PRCP");
      if (csv.header().has("AWND")) {
        StationDays.need(csv.header(), RIGHT, "AWND_ATTRIBUTES");
        element(days, row, date.get(), Reading.WIND, "AWND");
      }
    }
  }

  private static void element(
      StationDays days, Row row, LocalDate date, Reading what, String column) {
    String[] flags = row.text(column + "_ATTRIBUTES").split(",", -1);
    days.read(row, date, what, column, text -> value(text, flags));
  }

  private static OptionalDouble value(String text, String[] flags) {
    return GhcnValues.value(text, flags[0], flags.length > 1 ? flags[1] : "");
  }
}
