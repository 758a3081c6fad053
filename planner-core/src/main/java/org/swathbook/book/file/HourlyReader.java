package org.swathbook.book.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.measure.Inches;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Unit;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvHeader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;
import org.swathbook.weather.HourlyForecast;

/**
 * Reads {@code weather/STATION-hourly.csv}, a forecast: {@code time} of the full hour's beginning
 * in civil time of the station, {@code temp_f} or {@code temp_c}, {@code rh_pct}, {@code wind_mph}
 * or {@code wind_ms}, {@code gust_mph} or {@code gust_ms}, {@code from}, {@code rain_in} or {@code
 * rain_mm}. Cells may be blank: not said.
 */
public final class HourlyReader {
  private static final CsvColumns COLUMNS =
      CsvColumns.required("time")
          .andOptional(
              "temp_f",
              "temp_c",
              "rh_pct",
              "wind_mph",
              "wind_ms",
              "gust_mph",
              "gust_ms",
              "from",
              "rain_in",
              "rain_mm");

  private static final double WINDIEST_MPH = 250;
  private static final double MOST_RAIN_IN = 15;
  private static final double HOTTEST_F = 140;
  private static final double COLDEST_F = -130;

  private final Problems problems = new Problems();
  private final Map<LocalDateTime, Integer> lines = new HashMap<>();
  private final List<HourlyForecast.Hour> hours = new ArrayList<>();

  private HourlyReader() {}

  /** The table of a station; empty when the book has none. */
  public static Optional<HourlyForecast> read(Path book, String station) {
    String name = "weather/" + station + "-hourly.csv";
    if (!BookPaths.isPlainName(station) || !Files.isRegularFile(book.resolve(name))) {
      return Optional.empty();
    }
    HourlyReader reader = new HourlyReader();
    Optional<CsvHeader> header = new Table(name, COLUMNS).read(book, reader.problems, reader::row);
    header.ifPresent(h -> reader.twoUnits(h, name));
    reader.problems.throwIfAny();
    return Optional.of(new HourlyForecast(reader.hours));
  }

  private void twoUnits(CsvHeader header, String name) {
    for (String[] pair :
        new String[][] {
          {"temp_f", "temp_c"},
          {"wind_mph", "wind_ms"},
          {"gust_mph", "gust_ms"},
          {"rain_in", "rain_mm"}
        }) {
      if (header.has(pair[0]) && header.has(pair[1])) {
        throw ProblemsException.of(
            org.swathbook.source.Mark.startOf(name),
            "both " + pair[0] + " and " + pair[1] + " are there",
            "leave one of them out");
      }
    }
  }

  private void row(CsvRow csv) {
    Row row = new Row(csv, problems);
    Optional<LocalDateTime> time = row.need("time", HourlyReader::time, "2027-06-08T10:00");
    OptionalDouble temperature =
        either(
            row,
            "temp_f",
            within(COLDEST_F, HOTTEST_F, Unit.FAHRENHEIT),
            "temp_c",
            within(-90, 60, Unit.CELSIUS));
    OptionalDouble humidity = one(row, "rh_pct", Parsers.number(0, 100), "55");
    OptionalDouble wind = wind(row, "wind");
    OptionalDouble gust = wind(row, "gust");
    OptionalDouble from = one(row, "from", MixCells::degrees, "W");
    OptionalDouble rain =
        either(
            row,
            "rain_in",
            t -> Inches.toMm(Parsers.number(0, MOST_RAIN_IN).parse(t)),
            "rain_mm",
            Parsers.number(0, Inches.toMm(MOST_RAIN_IN)));
    if (!row.isSound()) {
      return;
    }
    Integer line = lines.putIfAbsent(time.orElseThrow(), row.line());
    if (line != null) {
      row.problem("time", "line " + line + " has this hour already", "keep one of them");
      return;
    }
    hours.add(
        new HourlyForecast.Hour(time.orElseThrow(), temperature, humidity, wind, gust, from, rain));
  }

  private static OptionalDouble wind(Row row, String what) {
    return either(
        row,
        what + "_mph",
        t -> Unit.MILE_PER_HOUR.toSi(Parsers.number(0, WINDIEST_MPH).parse(t)),
        what + "_ms",
        Parsers.number(0, 112));
  }

  private static TextParser<Double> within(double least, double most, Unit unit) {
    return t -> unit.toSi(Parsers.number(least, most).parse(t));
  }

  private static OptionalDouble either(
      Row row, String one, TextParser<Double> parser, String other, TextParser<Double> second) {
    OptionalDouble value = one(row, one, parser, "12");
    return value.isPresent() ? value : one(row, other, second, "12");
  }

  private static OptionalDouble one(
      Row row, String column, TextParser<Double> parser, String example) {
    Optional<Double> value = row.find(column, parser, example);
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }

  /** {@code 2027-06-08T10:00} or with a blank. */
  private static LocalDateTime time(String text) {
    String t = text.strip();
    int cut = t.indexOf('T') > 0 ? t.indexOf('T') : t.indexOf(' ');
    if (cut < 0) {
      throw new MeasureException(
          "'" + text + "' is no hour of a day; write for example 2027-06-08T10:00");
    }
    try {
      LocalDateTime time = Texts.date(t.substring(0, cut)).atTime(Texts.time(t.substring(cut + 1)));
      if (!time.equals(time.truncatedTo(ChronoUnit.HOURS))) {
        throw new MeasureException(
            "'" + text + "' is no full hour; write one row an hour, on the hour");
      }
      return time;
    } catch (DateTimeParseException e) {
      throw new MeasureException(
          "'" + text + "' is no hour of a day; write for example 2027-06-08T10:00");
    }
  }
}
