package org.swathbook.growth;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.catalog.Weed;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.weather.SprayDays;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * Heat of the days of one weather year, and what it makes ready to come up: the same on every field
 * that has these days, whatever its soil and crop. With it what fields of one soil, and fields of
 * one crop and planting day, have in common in such a year. Each is computed when first asked for;
 * several threads may ask.
 */
final class SeasonHeat {
  /** Fields of one soil mostly come one after the other where there are many. */
  private static final int SOILS_KEPT = 32;

  /** Crops by planting day. */
  private static final int CROPS_KEPT = 80;

  private final List<WeatherDay> days;
  private final Map<ThermalClock, ByDay> byClock = new ConcurrentHashMap<>();
  private final Map<ThermalClock, ByDay> sumByClock = new ConcurrentHashMap<>();
  private final Map<Emergence, Ready> ready = new ConcurrentHashMap<>();

  /** Weeds by the day of tillage. */
  private static final int WEEDS_KEPT = 400;

  // Keys of several things are lists of them: as records they would have to be linked at every
  // start.
  private final Kept<List<Object>, WeedCourse> weeds = new Kept<>(WEEDS_KEPT);
  private final Kept<List<Object>, SoilCourse> soils = new Kept<>(SOILS_KEPT);
  private final Kept<List<Object>, CropCourse> crops = new Kept<>(CROPS_KEPT);

  /** By the rules of the book that asks; there is one at a time. */
  private volatile @Nullable HouseDays sprayDays;

  private volatile @Nullable GroundDays ground;

  private static final class HouseDays {
    private final HouseRules house;
    private final boolean[] suitable;

    HouseDays(HouseRules house, boolean[] suitable) {
      this.house = house;
      this.suitable = suitable;
    }
  }

  /** A figure of each day. */
  static final class ByDay {
    private final double[] values;

    private ByDay(double[] values) {
      this.values = values;
    }

    double on(int day) {
      return values[day];
    }

    /** Puts the figures of the first days into an array of days. */
    void copyTo(double[] target, int days) {
      System.arraycopy(values, 0, target, 0, days);
    }

    int days() {
      return values.length;
    }
  }

  /**
   * A weed's emergence by heat alone.
   *
   * @param startDay day from which heat counts
   * @param share that is ready by the end of a day where the heat of every day counts
   */
  record Ready(EmergenceCurve curve, int startDay, ByDay share) {}

  SeasonHeat(List<WeatherDay> days) {
    this.days = List.copyOf(days);
  }

  List<WeatherDay> days() {
    return days;
  }

  /** °C-days of each day. */
  ByDay of(ThermalClock clock) {
    return byClock.computeIfAbsent(clock, c -> byDay(c, days));
  }

  /** The same added up to the end of each day. */
  ByDay sumOf(ThermalClock clock) {
    return sumByClock.computeIfAbsent(clock, c -> sum(of(c)));
  }

  private static ByDay sum(ByDay heat) {
    double[] out = new double[heat.days()];
    double sum = 0;
    for (int d = 0; d < out.length; d++) {
      sum += heat.on(d);
      out[d] = sum;
    }
    return new ByDay(out);
  }

  static ByDay byDay(ThermalClock clock, List<WeatherDay> days) {
    double[] out = new double[days.size()];
    for (int d = 0; d < out.length; d++) {
      out[d] = ThermalTime.of(clock, days.get(d));
    }
    return new ByDay(out);
  }

  /** A soil of the station through these days, with no water but rain. */
  SoilCourse soil(SoilTexture texture, double latitude, Topsoil topsoil, SoilAge age) {
    List<Object> key = List.of(texture, latitude);
    SoilCourse known = soils.find(key);
    return known != null ? known : soils.get(key, k -> SoilCourse.of(ground(), topsoil, age));
  }

  /** Two threads may both make them, of the same figures. */
  private GroundDays ground() {
    GroundDays now = ground;
    if (now == null) {
      now = new GroundDays(days);
      ground = now;
    }
    return now;
  }

  /** A crop that nobody has looked at. */
  CropCourse crop(Crop crop, int plantingDay) {
    List<Object> key = List.of(crop.id(), plantingDay);
    CropCourse known = crops.find(key);
    return known != null
        ? known
        : crops.get(
            key, k -> CropCourse.of(crop, new CropClock(crop, of(crop.clock()), plantingDay)));
  }

  /**
   * A weed on open ground of these days, with no water but rain.
   *
   * @param tilledOn day of tillage; the number of days for none
   */
  WeedCourse weed(Weed weed, int tilledOn, SoilTexture texture, SoilCourse soil) {
    // How wet a soil is differs between soils; how much it rained does not.
    if (weed.emergence().waterBaseMPa().isPresent()) {
      return makeWeed(weed, tilledOn, texture, soil);
    }
    List<Object> key = List.of(weed.id(), tilledOn);
    WeedCourse known = weeds.find(key);
    return known != null ? known : weeds.get(key, k -> makeWeed(weed, tilledOn, texture, soil));
  }

  /** The same with whatever water the soil has had. */
  WeedCourse makeWeed(Weed weed, int tilledOn, SoilTexture texture, SoilCourse soil) {
    return WeedCourse.of(
        new Seedlings(Seedlings.Parameters.of(weed.emergence(), this, tilledOn, texture)),
        new WeedGrowth(WeedGrowth.Parameters.of(weed, this)),
        soil);
  }

  /** Days on which a sprayer can work; not to be written to. */
  boolean[] sprayDays(HouseRules house, StationWeather station) {
    HouseDays known = sprayDays;
    if (known == null || !known.house.equals(house)) {
      known = new HouseDays(house, findSprayDays(house, station));
      sprayDays = known;
    }
    return known.suitable;
  }

  private boolean[] findSprayDays(HouseRules house, StationWeather station) {
    SprayDays rule =
        new SprayDays(
            house.suitableRainMm(),
            house.suitableRainBeforeMm(),
            house::suitableShare,
            new Quantity(house.windMaxMph(), Unit.MILE_PER_HOUR).in(Unit.METRE_PER_SECOND));
    boolean[] out = new boolean[days.size()];
    for (int d = 0; d < out.length; d++) {
      LocalDate date = days.get(d).date();
      double before =
          d > 0
              ? days.get(d - 1).rainMm()
              : station.find(date.minusDays(1)).map(WeatherDay::rainMm).orElse(0.0);
      out[d] = rule.suitable(days.get(d), before);
    }
    return out;
  }

  Ready ready(Emergence emergence) {
    return ready.computeIfAbsent(emergence, this::makeReady);
  }

  private Ready makeReady(Emergence emergence) {
    EmergenceCurve curve = new EmergenceCurve(emergence);
    ByDay heat = of(emergence.clock());
    int start = startDay(emergence.start());
    double[] share = new double[days.size()];
    double sum = 0;
    for (int d = Math.max(0, start); d < share.length; d++) {
      sum += heat.on(d);
      share[d] = curve.at(sum);
    }
    return new Ready(curve, start, new ByDay(share));
  }

  /** Starts from September on belong to the autumn before the season. */
  private int startDay(MonthDay start) {
    LocalDate first = days.get(0).date();
    LocalDate date = start.atYear(first.getYear());
    if (date.isBefore(first)) {
      date = start.atYear(first.getYear() + 1);
    }
    return (int) (date.toEpochDay() - first.toEpochDay());
  }
}
