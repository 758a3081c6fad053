package org.swathbook.book.file;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.swathbook.book.Field;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Rate;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Dose;
import org.swathbook.program.Scouted;
import org.swathbook.program.SprayDay;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayWeather;
import org.swathbook.source.Mark;
import org.swathbook.source.Problems;
import org.swathbook.source.TextParser;
import org.swathbook.source.Texts;

/** A job as cells of the journal, and what was written down of a job put onto it. */
public final class PassCells {
  private PassCells() {}

  /**
   * A line a product, of what the job says itself. Spray volume and adjuvants, for which the
   * journal has no columns, stand in the note of the first line.
   *
   * @param mix id by which the loading pad knows the mix; may be blank
   */
  public static List<Map<String, String>> of(SprayJob job, Field field, int season, String mix) {
    Map<String, String> common = new LinkedHashMap<>();
    common.put("date", job.date().toString());
    common.put("field", field.id().value());
    common.put("season", Integer.toString(season));
    common.put("acres", number(field.acres()));
    common.put("mix", mix);
    common.put("crop", field.crop().value());
    job.time().ifPresent(t -> common.put("startTime", t.toString()));
    job.scouted().cropStage().ifPresent(s -> common.put("cropStage", s));
    common.put(
        "target",
        String.join(
            "; ", job.scouted().weedHeightCm().keySet().stream().map(WeedId::value).toList()));
    SprayWeather w = job.weather();
    if (!w.windForecast()) {
      w.windMph().ifPresent(v -> common.put("windMph", Numbers.decimals(v, 1)));
    }
    w.windFromDegrees().ifPresent(d -> common.put("windFrom", point(d)));
    w.temperatureF().ifPresent(t -> common.put("tempF", Numbers.decimals(t, 1)));
    List<Map<String, String>> out = new ArrayList<>();
    for (Dose d : job.mix().doses()) {
      Map<String, String> line = new LinkedHashMap<>(common);
      line.putAll(dose(d));
      line.put("note", out.isEmpty() ? besides(job) : "");
      out.add(line);
    }
    return out;
  }

  /** Product, rate and unit, so that they read back to the last bit. */
  public static Map<String, String> dose(Dose dose) {
    Rate rate = dose.named() ? dose.actives().get(0).rate() : dose.rate();
    return Map.of(
        "product",
        dose.named() ? dose.actives().get(0).ingredient().name() : dose.product().id().value(),
        "rate",
        number(rate.amount()),
        "unit",
        rate.unitText());
  }

  private static String besides(SprayJob job) {
    List<String> parts = new ArrayList<>();
    job.mix()
        .gallonsPerAcre()
        .ifPresent(g -> parts.add("in " + Numbers.decimals(g, 1) + " gal/acre"));
    if (!job.mix().adjuvants().isEmpty()) {
      parts.add(
          "with "
              + String.join(" + ", job.mix().adjuvants().stream().map(PassCells::words).toList()));
    }
    return String.join(", ", parts);
  }

  private static String words(Adjuvant a) {
    return a.kind() + " " + a.rate();
  }

  static String number(double value) {
    BigDecimal plain = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    return plain.toPlainString();
  }

  private static String point(double degrees) {
    int n = Parsers.COMPASS.size();
    return Parsers.COMPASS.get((int) Math.rint(degrees * n / 360) % n);
  }

  /** The day among the cells; empty when there is none that can be read and is in the season. */
  public static Optional<LocalDate> date(Map<String, String> cells, int season) {
    return new Cells(cells, Mark::startOf, new Problems())
        .find("date", new SeasonDates(Optional.of(season))::inSeason);
  }

  /**
   * The job with what was written down of it on the day: date, start, wind, temperature, crop
   * stage. What it says of another day than that does not hold: weather, time, and what was seen.
   *
   * @param season of the book, in which the day must lie
   * @param cells by column
   * @param where the place of each column's value, for problems
   */
  public static SprayJob met(
      SprayJob planned,
      Crop crop,
      int season,
      Map<String, String> cells,
      Function<String, Mark> where) {
    Problems problems = new Problems();
    Cells read = new Cells(cells, where, problems);
    LocalDate date =
        read.find("date", new SeasonDates(Optional.of(season))::inSeason).orElse(planned.date());
    SprayJob job = date.equals(planned.date()) ? planned : onAnotherDay(planned, date);
    SprayWeather w = job.weather();
    OptionalDouble wind = read.number("windMph", Texts::number);
    OptionalDouble from = read.number("windFrom", MixCells::degrees);
    OptionalDouble temperature = read.number("tempF", Texts::number);
    Optional<LocalTime> start = read.find("startTime", Texts::time);
    problems.throwIfAny();
    SprayWeather met =
        new SprayWeather(
            wind.isPresent() ? wind : w.windMph(),
            w.gustMph(),
            from.isPresent() ? from : w.windFromDegrees(),
            temperature.isPresent() ? temperature : w.temperatureF(),
            w.highF(),
            w.coldestNightF(),
            w.humidityPct(),
            w.inversion(),
            w.hoursToRain(),
            w.dryHours(),
            w.rainNext24hIn(),
            w.rainNext48hIn(),
            w.rainNext10dIn(),
            w.meanPast3dF(),
            w.meanNext3dF(),
            wind.isEmpty() && w.windForecast());
    String stage = cells.getOrDefault("cropStage", "");
    Scouted s = job.scouted();
    Scouted seen =
        crop.findStage(stage).isPresent()
            ? new Scouted(Optional.of(stage), s.cropHeightCm(), s.weedHeightCm())
            : s;
    return job.with(new SprayDay(job.date(), start.isPresent() ? start : job.time(), seen, met));
  }

  private static SprayJob onAnotherDay(SprayJob planned, LocalDate date) {
    return planned.with(SprayDay.of(date));
  }

  private record Cells(Map<String, String> cells, Function<String, Mark> where, Problems problems) {

    <T> Optional<T> find(String column, TextParser<T> parser) {
      String text = cells.getOrDefault(column, "");
      if (text.isBlank()) {
        return Optional.empty();
      }
      try {
        return Optional.of(parser.parse(text));
      } catch (MeasureException e) {
        problems.add(where.apply(column), e, column.toLowerCase(Locale.ROOT));
        return Optional.empty();
      }
    }

    OptionalDouble number(String column, TextParser<Double> parser) {
      Optional<Double> value = find(column, parser);
      return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
  }
}
