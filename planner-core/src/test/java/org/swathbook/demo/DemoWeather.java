package org.swathbook.demo;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/**
 * Invented daily weather of one station: autoregressive temperature anomalies around monthly
 * normals, a first-order Markov chain of wet and dry days with mixed-exponential amounts, and a
 * narrower daily range on wet days (the general form of Richardson 1981, Water Resources Research
 * 17:182–190, from memory; all parameters here are ours).
 */
final class DemoWeather {
  /** Share of a station's anomaly that is the region's. */
  private static final double SHARED_AIR = 0.93;

  /** Share of days on which both stations take the region's chance of rain. */
  private static final double SHARED_RAIN = 0.6;

  /** How much likelier rain is after a wet day: P(wet|wet) − P(wet|dry). */
  private static final double RAIN_PERSISTENCE = 0.22;

  /** Daily range of a wet day against the normal one. */
  private static final double WET_RANGE = 0.70;

  private static final double RANGE_SD = 0.16;

  /** Seven showers in ten bring 0.45 of the mean, three the rest: skewed as summer storms are. */
  private static final double LIGHT_SHARE = 0.7;

  private static final double LIGHT_MEAN = 0.45;
  private static final double HEAVY_MEAN = (1 - LIGHT_SHARE * LIGHT_MEAN) / (1 - LIGHT_SHARE);

  private DemoWeather() {}

  static List<DemoDay> generate(DemoStation station) {
    Region region = Region.draw();
    Draws draws = new Draws(station.seed());
    List<Double> rain = rainMm(station, region, draws);
    List<Double> anomalies = anomaliesC(station, region, draws);
    List<DemoDay> days = new ArrayList<>();
    for (int i = 0; i < Region.days(); i++) {
      LocalDate day = Region.day(i);
      double mean = station.normals().meanC(day) + anomalies.get(i);
      double range = rangeC(station, day, rain.get(i) > 0, draws);
      days.add(DemoDay.of(day, mean + range / 2, mean - range / 2, rain.get(i)));
    }
    return days;
  }

  private static List<Double> rainMm(DemoStation station, Region region, Draws draws) {
    List<Double> rain = new ArrayList<>();
    boolean wetBefore = false;
    for (int i = 0; i < Region.days(); i++) {
      LocalDate day = Region.day(i);
      double ownChance = draws.uniform();
      double chance = draws.uniform() < SHARED_RAIN ? region.wetChance().get(i) : ownChance;
      double kind = draws.uniform();
      double share = draws.exponential(kind < LIGHT_SHARE ? LIGHT_MEAN : HEAVY_MEAN);
      // half of a wet season is more wet days, half is more rain on each
      double wetter = StrictMath.sqrt(InventedYears.wetness(day));
      double normally = Math.min(0.8, station.normals().wetShare(day) * wetter);
      double probability = normally * (1 - RAIN_PERSISTENCE) + (wetBefore ? RAIN_PERSISTENCE : 0);
      boolean wet = chance < probability && !InventedYears.keptDry(station, day);
      double amount = wet ? share * station.normals().rainPerWetDayMm(day) * wetter : 0;
      amount = Math.max(amount, InventedYears.downpourMm(station, day));
      rain.add(amount);
      wetBefore = amount > 0;
    }
    return rain;
  }

  private static List<Double> anomaliesC(DemoStation station, Region region, Draws draws) {
    List<Double> own = Region.autoregressive(draws, Region.days());
    double ownShare = StrictMath.sqrt(1 - SHARED_AIR * SHARED_AIR);
    List<Double> anomalies = new ArrayList<>();
    for (int i = 0; i < Region.days(); i++) {
      LocalDate day = Region.day(i);
      double air = SHARED_AIR * region.air().get(i) + ownShare * own.get(i);
      anomalies.add(InventedYears.warmthC(day) + air * station.normals().spreadC(day));
    }
    setMonths(anomalies);
    return anomalies;
  }

  /** Shifts the months whose mean is set so that their anomalies average to it. */
  private static void setMonths(List<Double> anomalies) {
    int start = 0;
    while (start < anomalies.size()) {
      YearMonth month = YearMonth.from(Region.day(start));
      int end = start;
      double sum = 0;
      while (end < anomalies.size() && YearMonth.from(Region.day(end)).equals(month)) {
        sum += anomalies.get(end);
        end++;
      }
      double mean = sum / (end - start);
      double shift = InventedYears.setAnomalyC(month).orElse(mean) - mean;
      for (int i = start; i < end; i++) {
        anomalies.set(i, anomalies.get(i) + shift);
      }
      start = end;
    }
  }

  /** Wet days are narrower and dry days as much wider, so that the month keeps its normal range. */
  private static double rangeC(DemoStation station, LocalDate day, boolean wet, Draws draws) {
    double wetShare = station.normals().wetShare(day);
    double factor = wet ? WET_RANGE : (1 - WET_RANGE * wetShare) / (1 - wetShare);
    double noise = 1 + RANGE_SD * draws.normal();
    return Math.max(1.5, station.normals().rangeC(day) * factor * noise);
  }
}
