package org.swathbook.trials;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.swathbook.book.Biotypes;
import org.swathbook.book.Book;
import org.swathbook.book.CropEconomics;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.book.Journal;
import org.swathbook.book.Prices;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Weed;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.measure.Money;
import org.swathbook.season.Kernel;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.weather.StationWeather;

/** A row's trial as a field of the engine. */
record TrialField(Field field, Kernel kernel, boolean startsClean, List<String> notes) {
  private static final int SEASON = 2027;

  /** Plants/m² where a trial prints none; control does not hang on it. */
  private static final double DENSITY = 100;

  /** Empty when the crop, the region or every weed is not known; the notes then say which. */
  static Optional<TrialField> of(
      TrialRow row, Catalog catalog, List<RegionalClimate> climates, List<String> notes) {
    Optional<RegionalClimate> climate = RegionalClimate.of(climates, row.region());
    Optional<Crop> crop = crop(row.crop(), catalog, notes);
    List<Weed> weeds = weeds(row.weed(), catalog, notes);
    if (climate.isEmpty()) {
      notes.add("no climate kept for " + row.region());
    }
    if (climate.isEmpty() || crop.isEmpty() || weeds.isEmpty()) {
      return Optional.empty();
    }
    StationWeather weather = climate.get().weather();
    LocalDate planted =
        (crop.get().id().value().equals("corn") ? climate.get().corn() : climate.get().soybean())
            .atYear(SEASON);
    FieldBuilder builder =
        FieldBuilder.of("trial", crop.get().id().value(), planted.toString())
            .traits(traits(catalog).toArray(String[]::new))
            .station(weather.id(), climate.get().latitude())
            .stateUnknown();
    // A burndown finds plants that no tillage took; all other trials start on clean ground.
    boolean clean = !row.program().toLowerCase(Locale.ROOT).contains("burndown");
    if (clean) {
      builder.tilled();
    }
    Field field = builder.build();
    List<WeedPressure> pressures = new ArrayList<>();
    for (Weed weed : weeds) {
      List<Resistance> resists = BiotypeText.of(row.biotype(), weed);
      pressures.add(
          new WeedPressure(
              field.id(),
              weed,
              DENSITY,
              DriverKind.YES,
              Biotypes.withSusceptibleRest(Biotypes.independent(resists)),
              resists,
              ""));
    }
    Book book = book(catalog, field, pressures, weather);
    return Optional.of(
        new TrialField(field, Kernel.of(book, TraceBuilder.build(book, field)), clean, notes));
  }

  private static Optional<Crop> crop(String text, Catalog catalog, List<String> notes) {
    String low = text.toLowerCase(Locale.ROOT);
    for (Crop c : catalog.crops()) {
      if (low.contains(c.name().toLowerCase(Locale.ROOT))
          || low.contains(c.id().value().replace("grain-", ""))) {
        return Optional.of(c);
      }
    }
    if (low.contains("bare ground") || low.contains("fallow") || low.contains("n/s")) {
      notes.add("no crop: walked under soybean in 30 in. rows");
      return catalog.findCrop("soybean");
    }
    notes.add("crop not in the catalog: " + text);
    return Optional.empty();
  }

  private static List<Weed> weeds(String text, Catalog catalog, List<String> notes) {
    List<Weed> out = new ArrayList<>();
    for (String name : text.split("[,;]")) {
      String n = name.strip();
      Optional<Weed> weed = catalog.weeds().stream().filter(w -> isCalled(w, n)).findFirst();
      weed.ifPresentOrElse(out::add, () -> notes.add("weed not in the catalog: " + n));
    }
    return out;
  }

  private static boolean isCalled(Weed weed, String name) {
    return weed.latin().equalsIgnoreCase(name)
        || weed.name().equalsIgnoreCase(name)
        || weed.aliases().stream().anyMatch(name::equalsIgnoreCase)
        || weed.latin().startsWith("Bassia") && name.startsWith("Kochia")
        || weed.latin().startsWith("Kochia") && name.startsWith("Bassia")
        || weed.latin().startsWith("Conyza") && name.startsWith("Erigeron")
        || weed.latin().startsWith("Erigeron") && name.startsWith("Conyza")
        || weed.latin().contains("tuberculatus") && name.equals("Amaranthus rudis");
  }

  /** The crop has every tolerance: what a trial sprayed was meant to be sprayed. */
  private static Set<String> traits(Catalog catalog) {
    Set<String> out = new TreeSet<>();
    catalog.ingredients().stream()
        .flatMap(i -> i.uses().stream())
        .flatMap(u -> u.traits().find().stream())
        .flatMap(Collection::stream)
        .forEach(t -> out.add(t.toString()));
    return new LinkedHashSet<>(out);
  }

  private static Book book(
      Catalog catalog, Field field, List<WeedPressure> weeds, StationWeather weather) {
    Map<CropId, CropEconomics> crops = new TreeMap<>();
    catalog.crops().forEach(c -> crops.put(c.id(), new CropEconomics(5, 100)));
    return new Book(
        "trial",
        SEASON,
        catalog,
        HouseRules.DEFAULTS,
        crops,
        Money.ofDollars(9),
        Money.ofDollars(2.5),
        List.of(field),
        weeds,
        Journal.EMPTY,
        List.of(),
        new Prices(Map.of()),
        Map.of(weather.id(), weather),
        List.of());
  }

  /** Plants from this day on are those of the trial. */
  LocalDate upFrom() {
    return startsClean ? field.plantDate() : LocalDate.MIN;
  }

  /** First day after planting, in the median year, on which the plants are that tall. */
  Optional<LocalDate> dayOfHeight(double cm) {
    List<LocalDate> dates = new ArrayList<>();
    for (SeasonTrace trace : kernel.traces().years()) {
      dates.add(
          IntStream.range(trace.plantingDay() + 1, trace.harvestDay())
              .filter(d -> heightCm(trace, d) >= cm)
              .mapToObj(trace::bookDateOf)
              .findFirst()
              .orElse(LocalDate.MAX));
    }
    dates.sort(null);
    LocalDate median = dates.get((dates.size() - 1) / 2);
    return median.equals(LocalDate.MAX) ? Optional.empty() : Optional.of(median);
  }

  /** What nine plants in ten of the first weed do not top: the height that people call theirs. */
  private double heightCm(SeasonTrace trace, int day) {
    CohortSet cohorts = trace.cohorts(0);
    int first = startsClean ? trace.plantingDay() : 0;
    List<Integer> up =
        IntStream.range(0, cohorts.count())
            .filter(c -> cohorts.emergedOn(c) >= first && cohorts.emergedOn(c) <= day)
            .boxed()
            .toList();
    double taller = 0.1 * up.stream().mapToDouble(cohorts::perM2).sum();
    for (int c : up) {
      // Earlier cohorts are never shorter.
      taller -= cohorts.perM2(c);
      if (taller < 0) {
        return cohorts.heightCm(c, day);
      }
    }
    return 0;
  }
}
