package org.swathbook.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.Tillage;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/** Computes the outdoors of a field in every full weather year of its station. */
public final class TraceBuilder {
  /** Stands in for a latitude that a field does not name; it only moves evaporation a little. */
  public static final double ASSUMED_LATITUDE = 41;

  /** Stands in for a soil texture that a field does not name. */
  public static final SoilTexture ASSUMED_TEXTURE = SoilTexture.SILT_LOAM;

  /** Days before harvest at which soil control is no longer needed. */
  private static final int FREE_BEFORE_HARVEST = 30;

  private static final double NEARLY_ALL_UP = 0.95;

  private TraceBuilder() {}

  /**
   * The trace with no day of the book's season taken as observed.
   *
   * @throws IllegalArgumentException when the station has no weather or no full year, or the
   *     planting date lies outside the season
   */
  public static TraceSet build(Book book, Field field) {
    return build(book, field, LocalDate.MIN);
  }

  /**
   * The trace in which the season's own weather up to a day is real in every year, and so is what
   * was scouted up to it.
   */
  public static TraceSet build(Book book, Field field, LocalDate observedTo) {
    return build(book, field, observedTo, WeatherEdit.NONE);
  }

  /**
   * The outdoors in which the season's own weather up to a day is real in every year, with what was
   * seen of crop and water in the place of the book's own scoutings.
   *
   * @throws IllegalArgumentException as {@link #build(Book, Field)}
   */
  public static FieldOutdoors outdoors(
      Book book, Field field, LocalDate observedTo, ScoutedField seen) {
    return outdoors(book, field, observedTo, WeatherEdit.NONE, seen);
  }

  /** The same under another weather, as far as it is not observed yet. */
  public static TraceSet build(Book book, Field field, LocalDate observedTo, WeatherEdit weather) {
    ScoutedField seen = ScoutedField.of(book, field, observedTo);
    return outdoors(book, field, observedTo, weather, seen).with(seen);
  }

  /**
   * The trace of the book's own season alone, in its own weather and with what was scouted in it.
   *
   * @param shared of the stations of one book
   * @throws IllegalArgumentException when the station does not have all of its days, or the
   *     planting date lies outside it
   */
  public static TraceSet ofSeason(Book book, Field field, SharedOutdoors shared) {
    if (!book.station(field).scenarioYears().contains(book.season())) {
      throw new IllegalArgumentException(
          "station " + field.station() + " has no full weather of " + book.season());
    }
    LocalDate end = LocalDate.of(book.season(), 10, 31);
    ScoutedField seen = ScoutedField.of(book, field, end);
    return outdoors(book, field, List.of(book.season()), end, WeatherEdit.NONE, seen, shared)
        .with(seen);
  }

  private static FieldOutdoors outdoors(
      Book book, Field field, LocalDate observedTo, WeatherEdit weather, ScoutedField seen) {
    List<Integer> years = book.station(field).scenarioYears();
    return outdoors(book, field, years, observedTo, weather, seen, new SharedOutdoors());
  }

  private static FieldOutdoors outdoors(
      Book book,
      Field field,
      List<Integer> years,
      LocalDate observedTo,
      WeatherEdit weather,
      ScoutedField seen,
      SharedOutdoors shared) {
    StationWeather station = book.station(field);
    if (years.isEmpty()) {
      throw new IllegalArgumentException(
          "station "
              + station.id()
              + " has no full weather year from 1 September to 31 October of the next year");
    }
    Crop crop = book.catalog().crop(field.crop());
    List<WeedPressure> weeds = book.weedsOf(field.id());
    Topsoil topsoil = shared.topsoil(texture(field), latitude(field));
    SoilAge age = new SoilAge(shared.ageing(station, texture(field), latitude(field), topsoil));
    List<YearsWeather> weathers = new ArrayList<>();
    for (int year : years) {
      SeasonHeat days =
          weather == WeatherEdit.NONE
              ? shared.season(station, year, book.season(), observedTo)
              : new SeasonHeat(ScenarioDays.of(station, year, book.season(), observedTo, weather));
      checkPlanting(field, book.season(), year, days.days());
      weathers.add(new YearsWeather(year, days));
    }
    Function<YearsWeather, FieldOutdoors.Year> made =
        y -> year(book, field, crop, weeds, y.year(), y.days(), topsoil, age, seen);
    List<FieldOutdoors.Year> out = new ArrayList<>();
    // The first alone: two threads would at a cold start both link what a year calls for the first
    // time, of which the class-data archive holds one. The others side by side: no year reads
    // another.
    out.add(made.apply(weathers.get(0)));
    if (weathers.size() > 1) {
      out.addAll(weathers.subList(1, weathers.size()).parallelStream().map(made).toList());
    }
    return new FieldOutdoors(field, crop, weeds, book.season(), seen, out);
  }

  /** What the trace assumes because the field does not say it, in words; empty when it says all. */
  public static List<String> assumed(Field field) {
    List<String> out = new ArrayList<>();
    if (field.latitude().isEmpty()) {
      out.add("latitude not given: 41 degrees north for evaporation");
    }
    if (field.soilTextures().isEmpty()) {
      out.add("soil texture not given: " + ASSUMED_TEXTURE + " for the fade of soil actives");
    }
    if (field.rowSpacingCm().isEmpty()) {
      out.add("row spacing not given: the rows that close last");
    }
    if (field.harvestDate().isEmpty()) {
      out.add("harvest date not given: 31 October");
    }
    return out;
  }

  private static SoilTexture texture(Field field) {
    return field.soilTextures().isEmpty() ? ASSUMED_TEXTURE : field.soilTextures().get(0);
  }

  private static double latitude(Field field) {
    return field.latitude().orElse(ASSUMED_LATITUDE);
  }

  private record YearsWeather(int year, SeasonHeat days) {}

  private static void checkPlanting(Field field, int season, int year, List<WeatherDay> weather) {
    int plantingDay = SeasonTrace.dayOf(field.plantDate(), season, year);
    if (plantingDay < 0 || plantingDay >= weather.size()) {
      throw new IllegalArgumentException(
          "field "
              + field.id()
              + " is planted on "
              + field.plantDate()
              + ", outside 1 September "
              + (season - 1)
              + " to 31 October "
              + season);
    }
  }

  private static FieldOutdoors.Year year(
      Book book,
      Field field,
      Crop crop,
      List<WeedPressure> weeds,
      int year,
      SeasonHeat heat,
      Topsoil topsoil,
      SoilAge age,
      ScoutedField seen) {
    int season = book.season();
    int plantingDay = SeasonTrace.dayOf(field.plantDate(), season, year);
    ScoutedYear scouted = new ScoutedYear(seen, season, year);
    List<WeatherDay> weather = heat.days();
    List<WeatherDay> days = scouted.watered(weather);
    int harvestDay = harvestDay(field, season, year, days.size());
    SortedMap<Integer, Integer> stages = scouted.stages(crop);
    CropCourse course =
        stages.isEmpty()
            ? heat.crop(crop, plantingDay)
            : CropCourse.of(crop, new CropClock(crop, days, plantingDay, stages));
    CropClock clock = course.clock();
    CanopyClock canopy = new CanopyClock(crop, field, clock, harvestDay);
    boolean tilled = field.tillage() == Tillage.TILLED;
    SoilCourse soil =
        days == weather
            ? heat.soil(texture(field), latitude(field), topsoil, age)
            : SoilCourse.of(days, topsoil, age);
    OutdoorYear outdoors =
        model(
                weeds,
                heat,
                tilled ? plantingDay : days.size(),
                texture(field),
                soil,
                days == weather)
            .run(soil.days(), canopy);
    SeasonTrace.Daily daily =
        new SeasonTrace.Daily(
            clock.stage(),
            heightsCm(course, scouted.cropHeightsCm()),
            canopy,
            soil,
            heat.days(),
            // Water from a pivot is no weather that holds a sprayer back.
            heat.sprayDays(book.house(), book.station(field)));
    List<CohortSet> cohorts = new ArrayList<>();
    List<Integer> neededUntil = new ArrayList<>();
    for (int w = 0; w < weeds.size(); w++) {
      WeedPressure p = weeds.get(w);
      double[] perM2 = SeedlingDays.perM2(outdoors.emerging[w], p.perM2());
      cohorts.add(CohortBuilder.build(p.weed(), perM2, outdoors.thermal[w], plantingDay, tilled));
      int free = Math.min(canopy.canopyDay(), harvestDay - FREE_BEFORE_HARVEST);
      neededUntil.add(Math.max(0, Math.min(free, SeedlingDays.dayOfShare(perM2, NEARLY_ALL_UP))));
    }
    return new FieldOutdoors.Year(
        year,
        plantingDay,
        clock.emergenceDay(),
        harvestDay,
        canopy.canopyDay(),
        daily,
        cohorts,
        neededUntil);
  }

  /** A harvest after 31 October counts as that day, the strict side of intervals before harvest. */
  private static int harvestDay(Field field, int season, int year, int days) {
    Optional<LocalDate> harvest = field.harvestDate();
    return harvest.isPresent()
        ? Math.min(days - 1, SeasonTrace.dayOf(harvest.get(), season, year))
        : days - 1;
  }

  private static double[] heightsCm(CropCourse crop, SortedMap<Integer, Double> seenCm) {
    if (seenCm.isEmpty()) {
      return crop.heightCm();
    }
    double[] out = new double[crop.heightCm().length];
    double above = 0;
    for (int d = 0; d < out.length; d++) {
      double modelledCm = crop.heightCm()[d];
      // From the height that was seen on it grows as the model does.
      above = seenCm.containsKey(d) ? seenCm.getOrDefault(d, 0.0) - modelledCm : above;
      out[d] = Math.max(0, modelledCm + above);
    }
    return out;
  }

  /**
   * @param rainAlone whether the soil has had no water but the rain of these days
   */
  private static OutdoorModel model(
      List<WeedPressure> weeds,
      SeasonHeat heat,
      int tilledOn,
      SoilTexture texture,
      SoilCourse soil,
      boolean rainAlone) {
    List<WeedCourse> courses = new ArrayList<>();
    for (WeedPressure p : weeds) {
      courses.add(
          rainAlone
              ? heat.weed(p.weed(), tilledOn, texture, soil)
              : heat.makeWeed(p.weed(), tilledOn, texture, soil));
    }
    return new OutdoorModel(courses);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEEDS,
                TraceBuilder.class,
                "needed until",
                "first of so large a share of the weed up, canopy, so many days before harvest",
                "definition")
            .with("share", NEARLY_ALL_UP, "")
            .with("before harvest", FREE_BEFORE_HARVEST, "days"),
        ModelCard.of(
                ModelSection.WEATHER,
                TraceBuilder.class,
                "latitude that a field does not name",
                "moves evaporation a little",
                "default")
            .with("latitude", ASSUMED_LATITUDE, "degrees north"));
  }
}
