package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvHeader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;
import org.swathbook.weather.ObservedDay;

/**
 * A table written by hand or by an adviser's own sheet: one row a day in order of date,
 * temperatures in °F or °C, rain in inches or millimetres, T for a trace. A day or a cell may be
 * missing; a day that stands twice or out of order is a slip of the hand. Irrigation, where a
 * column names it, is kept beside the rain.
 */
final class PlainDays implements StationReader {
  private static final List<String> EXTRAS =
      List.of("irrigation_in", "irrigation_mm", "wind_mph", "wind_ms", "rh_pct");

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

  /** A column of temperatures, °C, in the unit that it names. */
  private static Column<Double> temperature(String name) {
    boolean fahrenheit = name.endsWith("_f");
    return Column.of(name, t -> celsius(t, fahrenheit), fahrenheit ? "75" : "24.1");
  }

  /** A column of water, mm; a trace is nothing. */
  private static Column<Double> water(String name, String example) {
    boolean inches = name.endsWith("_in");
    TextParser<Double> number = Parsers.number(0, inches ? MOST_RAIN_IN : MOST_RAIN_MM);
    return Column.of(
        name,
        t ->
            t.equalsIgnoreCase("T")
                ? 0.0
                : inches
                    ? new Quantity(number.parse(t), Unit.INCH).in(Unit.MILLIMETRE)
                    : number.parse(t),
        example);
  }

  /**
   * Columns in use, made once for all rows.
   *
   * @param extras whether there is any column beside temperatures and rain
   */
  private record Units(
      Column<Double> tmax, Column<Double> tmin, Column<Double> rain, boolean extras) {}

  @Override
  public boolean fits(FirstLines lines) {
    return lines.isWide()
        || lines.first().isEmpty()
        || lines.cells().stream().anyMatch(c -> c.equals("date") || COLUMNS.optional().contains(c));
  }

  @Override
  public List<ObservedDay> read(
      Path book, String file, FirstLines lines, Problems problems, List<String> notes) {
    Rows rows = new Rows(problems);
    Optional<CsvHeader> header = new Table(file, COLUMNS).read(book, problems, rows::row);
    header.ifPresent(rows::judge);
    if (header.filter(h -> h.has("rh_pct")).isPresent()) {
      notes.add(file + ": humidity is not used yet.");
    }
    return rows.days;
  }

  /** One pass over the rows of one file. */
  private static final class Rows {
    private final Problems problems;
    private final List<ObservedDay> days = new ArrayList<>();
    private final Column<LocalDate> date = Column.ofNew("date", Texts::date, "2026-05-11");
    private final Column<Double> irrigationIn = water("irrigation_in", "0.6");
    private final Column<Double> irrigationMm = water("irrigation_mm", "15");
    private Optional<Units> units = Optional.empty();
    private boolean judged;
    private @Nullable LocalDate last;

    Rows(Problems problems) {
      this.problems = problems;
    }

    private void row(CsvRow csv) {
      judge(csv.header());
      if (units.isEmpty()) {
        return;
      }
      Units u = units.get();
      Row row = new Row(csv, problems);
      Optional<LocalDate> day = row.need(date);
      if (day.isPresent()) {
        inOrder(row, day.get());
      } else {
        // A date that cannot be read says nothing of its neighbors.
        last = null;
      }
      Optional<Double> tmax = row.find(u.tmax());
      Optional<Double> tmin = row.find(u.tmin());
      Optional<Double> rain = row.find(u.rain());
      double irrigation = u.extras() ? irrigation(row) : 0;
      OptionalDouble wind = u.extras() ? wind(row) : OptionalDouble.empty();
      if (u.extras()) {
        row.find("rh_pct", Parsers.number(0, 100), "55");
      }
      if (tmax.isPresent() && tmin.isPresent() && tmax.get() < tmin.get()) {
        row.problem(
            u.tmax().name(),
            "the highest temperature is below the lowest",
            "exchange the two, or mend the one that is wrong");
      }
      if (row.isSound()) {
        days.add(
            new ObservedDay(day.orElseThrow(), box(tmax), box(tmin), box(rain), irrigation, wind));
      }
    }

    private double irrigation(Row row) {
      return row.find(irrigationIn).orElse(0.0) + row.find(irrigationMm).orElse(0.0);
    }

    private void inOrder(Row row, LocalDate date) {
      LocalDate before = last;
      last = date;
      if (before == null) {
        return;
      }
      long apart = ChronoUnit.DAYS.between(before, date);
      if (apart < 1) {
        row.problem(
            "date", date + " comes after " + before, "write each day once, in order of date");
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
        boolean extras = EXTRAS.stream().anyMatch(header::has);
        units =
            Optional.of(
                new Units(
                    temperature(tmax.get()),
                    temperature(tmin.get()),
                    water(rain.get(), "0.35"),
                    extras));
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

  private static double celsius(String text, boolean fahrenheit) {
    double value = Texts.number(text);
    double c = fahrenheit ? new Quantity(value, Unit.FAHRENHEIT).in(Unit.CELSIUS) : value;
    if (c < COLDEST_C || c > HOTTEST_C) {
      throw new MeasureException(
          "'" + text + "' is no temperature of the air; check the unit that the column names");
    }
    return c;
  }

  private static OptionalDouble wind(Row row) {
    Optional<Double> mph = row.find("wind_mph", Parsers.number(0, 250), "7");
    Optional<Double> ms = row.find("wind_ms", Parsers.number(0, 110), "3.1");
    if (mph.isPresent() && ms.isPresent()) {
      row.problem("wind_ms", "the wind stands in mph too", "leave one of the two cells blank");
    }
    return mph.isPresent()
        ? OptionalDouble.of(new Quantity(mph.get(), Unit.MILE_PER_HOUR).in(Unit.METRE_PER_SECOND))
        : box(ms);
  }

  private static OptionalDouble box(Optional<Double> value) {
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }
}
