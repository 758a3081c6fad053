package org.swathbook.trials;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * Typical weather of a region: ten years drawn around monthly normals with a fixed seed. Invented
 * years, since the weather of the trials is not printed; a prediction is their mean.
 */
record RegionalClimate(
    String region,
    List<String> words,
    String state,
    double latitude,
    List<Double> tmaxC,
    List<Double> tminC,
    List<Double> rainMm,
    MonthDay corn,
    MonthDay soybean) {

  private static final CsvColumns COLUMNS =
      CsvColumns.required(
          "region",
          "words",
          "state",
          "latitude",
          "tmaxC",
          "tminC",
          "rainMm",
          "cornPlanted",
          "soybeanPlanted",
          "source");

  /**
   * Correlation of a day's anomaly with the next, and its size in °C (common practice, no source).
   */
  private static final double PERSISTENCE = 0.65;

  private static final double SPREAD_C = 4;

  /** Rain comes on such a share of the days (common practice, no source). */
  private static final double WET_SHARE = 0.3;

  private static final int YEARS = 10;
  private static final int LAST_YEAR = 2026;

  static List<RegionalClimate> read(String name, byte[] content) {
    Problems problems = new Problems();
    List<RegionalClimate> out = new ArrayList<>();
    for (CsvRow row : new CsvReader().read(name, content, COLUMNS, problems).rows()) {
      out.add(
          new RegionalClimate(
              row.text("region"),
              Arrays.asList(row.text("words").split(";")),
              row.text("state"),
              Double.parseDouble(row.text("latitude")),
              twelve(row.text("tmaxC")),
              twelve(row.text("tminC")),
              twelve(row.text("rainMm")),
              MonthDay.parse("--" + row.text("cornPlanted")),
              MonthDay.parse("--" + row.text("soybeanPlanted"))));
    }
    problems.throwIfAny();
    return List.copyOf(out);
  }

  private static List<Double> twelve(String text) {
    List<Double> out = Arrays.stream(text.split(" ")).map(Double::valueOf).toList();
    if (out.size() != 12) {
      throw new IllegalArgumentException("twelve months, not " + text);
    }
    return out;
  }

  /** The climate that a row's region names; of several states the first. */
  static Optional<RegionalClimate> of(List<RegionalClimate> all, String region) {
    for (String word : region.split("[/,;() ]+")) {
      for (RegionalClimate c : all) {
        if (c.words().stream().anyMatch(w -> w.equals(word))) {
          return Optional.of(c);
        }
      }
    }
    return all.stream()
        .filter(
            c ->
                c.words().stream()
                    .anyMatch(
                        w ->
                            w.length() > 2
                                && region
                                    .toLowerCase(Locale.ROOT)
                                    .contains(w.toLowerCase(Locale.ROOT))))
        .findFirst();
  }

  /** Ten weather years of the region, the same every time. */
  StationWeather weather() {
    Random random = new Random(state.hashCode());
    List<WeatherDay> days = new ArrayList<>();
    double anomaly = 0;
    LocalDate end = LocalDate.of(LAST_YEAR, 10, 31);
    for (LocalDate d = LocalDate.of(LAST_YEAR - YEARS, 9, 1); !d.isAfter(end); d = d.plusDays(1)) {
      anomaly =
          PERSISTENCE * anomaly
              + Math.sqrt(1 - PERSISTENCE * PERSISTENCE) * SPREAD_C * random.nextGaussian();
      boolean wet = random.nextDouble() < WET_SHARE;
      double amount = -StrictMath.log(1 - random.nextDouble());
      int month = d.getMonthValue() - 1;
      double mean = rainMm.get(month) / (d.lengthOfMonth() * WET_SHARE);
      days.add(
          new WeatherDay(
              d, at(tmaxC, d) + anomaly, at(tminC, d) + anomaly, wet ? amount * mean : 0));
    }
    return new StationWeather("region-" + state, days);
  }

  /** Straight lines between mid-months. */
  private static double at(List<Double> monthly, LocalDate day) {
    double position = day.getMonthValue() - 1.5 + (day.getDayOfMonth() - 0.5) / day.lengthOfMonth();
    int before = (int) Math.floor(position);
    double weight = position - before;
    return monthly.get(Math.floorMod(before, 12)) * (1 - weight)
        + monthly.get(Math.floorMod(before + 1, 12)) * weight;
  }
}
