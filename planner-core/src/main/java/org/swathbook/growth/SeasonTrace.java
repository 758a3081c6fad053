package org.swathbook.growth;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.catalog.Crop;
import org.swathbook.weather.WeatherDay;

/**
 * The outdoors of one field in one weather year. Nothing a sprayer does changes it. Day 0 is 1
 * September before the season, the last day 31 October; dates of the book map by month and day.
 */
public final class SeasonTrace {

  /**
   * Everything by day, the height as if the crop were never harvested. Fields share what is the
   * same on all of them, so nobody writes to it once it is here.
   */
  // A copy for every field would cost more than what it saves, and nobody compares two of them.
  @SuppressWarnings("ArrayRecordComponent")
  record Daily(
      double[] stage,
      double[] cropHeightCm,
      CanopyClock canopy,
      SoilCourse soil,
      List<WeatherDay> weather,
      boolean[] sprayable) {}

  private final int year;
  private final LocalDate first;
  private final Crop crop;
  private final int bookSeason;
  private final int plantingDay;
  private final int emergenceDay;
  private final int harvestDay;
  private final int canopyDay;
  private final double[] stage;
  private final double[] cropHeightCm;
  private final CanopyClock canopy;
  private final SoilCourse soil;
  private final List<WeatherDay> weather;
  private final boolean[] sprayable;
  private final List<CohortSet> weeds;
  private final int[] neededUntil;
  private final int firstLeafStage;
  private final int lastLeafStage;
  private final int emergenceStage;

  SeasonTrace(
      int year,
      int bookSeason,
      Crop crop,
      int plantingDay,
      int emergenceDay,
      int harvestDay,
      int canopyDay,
      Daily daily,
      List<CohortSet> weeds,
      int[] neededUntil) {
    this.year = year;
    this.bookSeason = bookSeason;
    this.first = LocalDate.of(year - 1, 9, 1);
    this.crop = crop;
    this.plantingDay = plantingDay;
    this.emergenceDay = emergenceDay;
    this.harvestDay = harvestDay;
    this.canopyDay = canopyDay;
    this.stage = daily.stage;
    this.cropHeightCm = daily.cropHeightCm;
    this.canopy = daily.canopy;
    this.soil = daily.soil;
    this.weather = daily.weather;
    this.sprayable = daily.sprayable;
    this.weeds = List.copyOf(weeds);
    this.neededUntil = neededUntil.clone();
    this.firstLeafStage = crop.findStage(crop.leafStages().get(0)).orElseThrow();
    this.lastLeafStage =
        crop.findStage(crop.leafStages().get(crop.leafStages().size() - 1)).orElseThrow();
    this.emergenceStage = crop.findStage(crop.emergenceStage()).orElseThrow();
  }

  /** The weather year. */
  public int year() {
    return year;
  }

  public int days() {
    return soil.days();
  }

  public LocalDate dateOf(int day) {
    return first.plusDays(day);
  }

  /**
   * Day of a date of the book's season, mapped by month and day (29 February falls on the 28th).
   */
  public int dayOf(LocalDate bookDate) {
    return dayOf(bookDate, bookSeason, year);
  }

  /** The same before there is a trace; below 0 or past the last day for a date outside it. */
  static int dayOf(LocalDate bookDate, int bookSeason, int year) {
    LocalDate first = LocalDate.of(year - 1, 9, 1);
    return (int) (bookDate.minusYears((long) bookSeason - year).toEpochDay() - first.toEpochDay());
  }

  /** The same month and day in the book's season. */
  public LocalDate bookDateOf(int day) {
    return dateOf(day).plusYears((long) bookSeason - year);
  }

  public Crop crop() {
    return crop;
  }

  public int plantingDay() {
    return plantingDay;
  }

  /** First day on which the crop counts as up; {@link #days()} when it never is. */
  public int emergenceDay() {
    return emergenceDay;
  }

  public int harvestDay() {
    return harvestDay;
  }

  /** Day on which the rows close; {@link #days()} when they never do. */
  public int canopyDay() {
    return canopyDay;
  }

  /**
   * Crop stage as a running number: the index in {@link Crop#stages()} of the last stage reached
   * plus the share of the way to the next; below 0 before the first stage.
   */
  public double stage(int day) {
    return stage[day];
  }

  /** Index of the last stage reached, -1 before the first. */
  public int stageIndex(int day) {
    return (int) Math.floor(stage[day]);
  }

  /** Name of the last stage reached; {@code planted} or {@code not planted} before the first. */
  public String stageName(int day) {
    int i = stageIndex(day);
    return i >= 0 ? crop.stages().get(i).name() : day >= plantingDay ? "planted" : "not planted";
  }

  /** First day on which a stage is reached; {@link #days()} when it is not. */
  public int dayOfStage(int stageIndex) {
    for (int d = plantingDay; d < stage.length; d++) {
      if (stage[d] >= stageIndex) {
        return d;
      }
    }
    return stage.length;
  }

  /** Crop leaf stages since emergence, fractional: the clock of competition. 0 before emergence. */
  public double leafStages(int day) {
    if (day < emergenceDay) {
      return 0;
    }
    double s = Math.min(stage[day], lastLeafStage);
    if (s >= firstLeafStage) {
      return s - firstLeafStage + 1;
    }
    return Math.max(0, (s - emergenceStage) / (firstLeafStage - emergenceStage));
  }

  /** 0 after harvest. */
  public double cropHeightCm(int day) {
    return day > harvestDay ? 0 : cropHeightCm[day];
  }

  /** Share of the ground under the crop, 0 to 1. */
  public double cover(int day) {
    return canopy.cover(day);
  }

  CanopyClock canopy() {
    return canopy;
  }

  /** Rain and irrigation of a day. */
  public double rainMm(int day) {
    return soil.rainMm(day);
  }

  /**
   * Rain and irrigation of the days after {@code from}, up to and with {@code to}; none is known
   * before day 0.
   */
  public double rainAfter(int from, int to) {
    return soil.rainAfter(from, to);
  }

  /** Age in stated-length days that a soil active gains between two days. */
  public double soilAge(int from, int to) {
    return soil.age(from, to);
  }

  /** The soil of these days, the very same object on fields that share it. */
  public SoilCourse soil() {
    return soil;
  }

  /** Temperatures and rain of a day. */
  public WeatherDay weather(int day) {
    return weather.get(day);
  }

  /** Whether the weather of a day lets a sprayer work. */
  public boolean sprayable(int day) {
    return sprayable[day];
  }

  /** First suitable day at or after a day; {@link #days()} when none is left. */
  public int firstSprayDay(int from) {
    for (int d = Math.max(0, from); d < sprayable.length; d++) {
      if (sprayable[d]) {
        return d;
      }
    }
    return sprayable.length;
  }

  public int weedCount() {
    return weeds.size();
  }

  /** Cohorts of a weed by its place in the field's list. */
  public CohortSet cohorts(int weed) {
    return weeds.get(weed);
  }

  /**
   * Day until which soil control of a weed is needed: 95 % up, canopy, or 30 days before harvest.
   */
  public int neededUntil(int weed) {
    return neededUntil[weed];
  }
}
