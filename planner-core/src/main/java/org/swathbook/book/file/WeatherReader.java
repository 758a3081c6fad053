package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvHeader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.Texts;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * Reads the daily weather of one station, {@code weather/ID.csv}: every day from the first to the
 * last in order of date, temperatures in °F or °C, rain in inches or millimetres, T for a trace.
 * Irrigation, where a column names it, counts as rain.
 */
final class WeatherReader {
  private static final CsvColumns COLUMNS =
      CsvColumns.required("date")
          .andOptional(
              "tmax_f",
              "tmax_c",
              "tmin_f",
              "tmin_c",
              "rain_in",
              "rain_mm",
              "irrigation_in",
              "irrigation_mm",
              "wind_mph",
              "wind_ms",
              "rh_pct");

  /** The highest and lowest temperatures and most rain of a day that a thermometer has met. */
  private static final double HOTTEST_C = 60;

  private static final double COLDEST_C = -90;
  private static final double MOST_RAIN_MM = 2000;
  private static final double MOST_RAIN_IN = 80;

  private final Problems problems;
  private final List<WeatherDay> days = new ArrayList<>();
  private Optional<Units> units = Optional.empty();
  private boolean judged;
  private @Nullable LocalDate last;

  /** Columns in use and the units they name. */
  private record Units(String tmax, String tmin, String rain) {
    double celsius(String column, double value) {
      return column.endsWith("_f") ? new Quantity(value, Unit.FAHRENHEIT).in(Unit.CELSIUS) : value;
    }
  }

  private WeatherReader(Problems problems) {
    this.problems = problems;
  }

  /** The station's weather, empty with problems when something is wrong with it. */
  static Optional<StationWeather> read(
      Path book, String station, Problems problems, List<String> notes) {
    int before = problems.count();
    Table table = new Table("weather/" + station + ".csv", COLUMNS);
    WeatherReader reader = new WeatherReader(problems);
    Optional<CsvHeader> header = table.read(book, problems, reader::row);
    header.ifPresent(
        h -> {
          reader.judge(h);
          if (h.names().stream().anyMatch(n -> n.startsWith("wind_") || n.equals("rh_pct"))) {
            notes.add(table.file() + ": wind and humidity are not used yet.");
          }
        });
    if (problems.count() > before) {
      return Optional.empty();
    }
    if (reader.days.isEmpty()) {
      problems.add(
          Mark.startOf(table.file()),
          "the station has no day of weather",
          "write a row for every day, from the first to the last");
      return Optional.empty();
    }
    return Optional.of(new StationWeather(station, reader.days));
  }

  private void row(CsvRow csv) {
    judge(csv.header());
    if (units.isEmpty()) {
      return;
    }
    Units u = units.get();
    Row row = new Row(csv, problems);
    Optional<LocalDate> date = row.need("date", Texts::date, "2026-05-11");
    date.ifPresent(d -> inOrder(row, d));
    if (date.isEmpty()) {
      // A date that cannot be read says nothing of its neighbors.
      last = null;
    }
    Optional<Double> tmax = temperature(row, u, u.tmax());
    Optional<Double> tmin = temperature(row, u, u.tmin());
    Optional<Double> rain = row.need(u.rain(), t -> water(u.rain(), t), "0.35");
    double irrigation =
        row.find("irrigation_in", t -> water("irrigation_in", t), "0.6").orElse(0.0)
            + row.find("irrigation_mm", t -> water("irrigation_mm", t), "15").orElse(0.0);
    row.find("wind_mph", Parsers.number(0, 250), "7");
    row.find("wind_ms", Parsers.number(0, 110), "3.1");
    row.find("rh_pct", Parsers.number(0, 100), "55");
    if (tmax.isPresent() && tmin.isPresent() && tmax.get() < tmin.get()) {
      row.problem(
          u.tmax(),
          "the highest temperature is below the lowest",
          "exchange the two, or mend the one that is wrong");
    }
    if (row.isSound()) {
      days.add(
          new WeatherDay(
              date.orElseThrow(),
              tmax.orElseThrow(),
              tmin.orElseThrow(),
              rain.orElseThrow() + irrigation));
    }
  }

  /** Millimetres in the unit that a column names; a trace is nothing. */
  private static double water(String column, String text) {
    if (text.equalsIgnoreCase("T")) {
      return 0;
    }
    return column.endsWith("_in")
        ? new Quantity(Parsers.number(0, MOST_RAIN_IN).parse(text), Unit.INCH).in(Unit.MILLIMETRE)
        : Parsers.number(0, MOST_RAIN_MM).parse(text);
  }

  private static Optional<Double> temperature(Row row, Units u, String column) {
    return row.need(
        column,
        t -> {
          double c = u.celsius(column, Texts.number(t));
          if (c < COLDEST_C || c > HOTTEST_C) {
            throw new MeasureException(
                "'" + t + "' is no temperature of the air; check the unit that the column names");
          }
          return c;
        },
        column.endsWith("_f") ? "75" : "24.1");
  }

  private void inOrder(Row row, LocalDate date) {
    LocalDate before = last;
    last = date;
    if (before == null) {
      return;
    }
    long apart = ChronoUnit.DAYS.between(before, date);
    if (apart < 1) {
      row.problem("date", date + " comes after " + before, "write each day once, in order of date");
    } else if (apart > 1) {
      row.problem(
          "date",
          (apart == 2 ? "1 day is" : apart - 1 + " days are") + " missing before " + date,
          "write a row for every day from the first to the last");
    }
  }

  /** Finds the columns in use once; one of each pair must be there. */
  private void judge(CsvHeader header) {
    if (judged) {
      return;
    }
    judged = true;
    Optional<String> tmax = one(header, "tmax_f", "tmax_c");
    Optional<String> tmin = one(header, "tmin_f", "tmin_c");
    Optional<String> rain = one(header, "rain_in", "rain_mm");
    if (tmax.isPresent() && tmin.isPresent() && rain.isPresent()) {
      units = Optional.of(new Units(tmax.get(), tmin.get(), rain.get()));
    }
  }

  private Optional<String> one(CsvHeader header, String a, String b) {
    List<String> there = Stream.of(a, b).filter(header::has).toList();
    if (there.size() != 1) {
      problems.add(
          header.mark(),
          there.isEmpty()
              ? "neither " + a + " nor " + b + " is among the columns"
              : "both " + a + " and " + b + " are among the columns",
          "keep one of the two");
      return Optional.empty();
    }
    return Optional.of(there.get(0));
  }
}
