package org.swathbook.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ordered;
import org.swathbook.measure.Money;
import org.swathbook.program.FieldId;
import org.swathbook.weather.StationWeather;

/**
 * An adviser's book for one season, read and checked. Fields are in the order of their file.
 *
 * @param scoutings what was seen in the fields, in the order of the file
 * @param notes what a reader of results should know of the book: rows that are not used yet, files
 *     that are missing; one sentence each
 */
public record Book(
    String name,
    int season,
    Catalog catalog,
    HouseRules house,
    Map<CropId, CropEconomics> crops,
    Money passCost,
    Money resprayExtra,
    List<Field> fields,
    List<WeedPressure> weeds,
    Journal journal,
    List<PastSeason> pastSeasons,
    Prices prices,
    Map<String, StationWeather> stations,
    List<Scouting> scoutings,
    List<String> notes) {

  public Book {
    crops = Ordered.map(crops);
    fields = List.copyOf(fields);
    weeds = List.copyOf(weeds);
    notes = List.copyOf(notes);
    pastSeasons = List.copyOf(pastSeasons);
    stations = Ordered.map(stations);
    scoutings = List.copyOf(scoutings);
  }

  /** A book of a season in which nobody has been out yet. */
  public Book(
      String name,
      int season,
      Catalog catalog,
      HouseRules house,
      Map<CropId, CropEconomics> crops,
      Money passCost,
      Money resprayExtra,
      List<Field> fields,
      List<WeedPressure> weeds,
      Journal journal,
      List<PastSeason> pastSeasons,
      Prices prices,
      Map<String, StationWeather> stations,
      List<String> notes) {
    this(
        name,
        season,
        catalog,
        house,
        crops,
        passCost,
        resprayExtra,
        fields,
        weeds,
        journal,
        pastSeasons,
        prices,
        stations,
        List.of(),
        notes);
  }

  /** The same book with other scoutings. */
  public Book withScoutings(List<Scouting> seen) {
    return with(fields, weeds, journal, stations, seen);
  }

  /** The same book with another journal. */
  public Book withJournal(Journal other) {
    return with(fields, weeds, other, stations, scoutings);
  }

  /** The same book with other weather. */
  public Book withStations(Map<String, StationWeather> others) {
    return with(fields, weeds, journal, others, scoutings);
  }

  public Optional<Field> findField(String typed) {
    return fields.stream().filter(f -> f.id().matches(typed)).findFirst();
  }

  /** Weeds of a field in the order of their file. */
  public List<WeedPressure> weedsOf(FieldId field) {
    List<WeedPressure> out = new ArrayList<>();
    for (WeedPressure w : weeds) {
      if (w.field().equals(field)) {
        out.add(w);
      }
    }
    return List.copyOf(out);
  }

  public StationWeather station(Field field) {
    StationWeather s = stations.get(field.station());
    if (s == null) {
      throw new IllegalArgumentException("no weather for station " + field.station());
    }
    return s;
  }

  /** The book with another state of a field that it holds. */
  public Book withField(Field changed) {
    return with(
        fields.stream().map(f -> f.id().equals(changed.id()) ? changed : f).toList(), weeds);
  }

  /** The book with another state of a weed that a field of it holds. */
  public Book withWeed(WeedPressure changed) {
    return with(
        fields,
        weeds.stream()
            .map(
                w ->
                    w.field().equals(changed.field()) && w.weed().id().equals(changed.weed().id())
                        ? changed
                        : w)
            .toList());
  }

  /** The book with more weeds of its fields. */
  public Book withMoreWeeds(List<WeedPressure> more) {
    List<WeedPressure> all = new ArrayList<>(weeds);
    all.addAll(more);
    return with(fields, all);
  }

  /** The same book under other house rules. */
  public Book with(HouseRules otherHouse) {
    return new Book(
        name,
        season,
        catalog,
        otherHouse,
        crops,
        passCost,
        resprayExtra,
        fields,
        weeds,
        journal,
        pastSeasons,
        prices,
        stations,
        scoutings,
        notes);
  }

  private Book with(List<Field> otherFields, List<WeedPressure> otherWeeds) {
    return with(otherFields, otherWeeds, journal, stations, scoutings);
  }

  private Book with(
      List<Field> otherFields,
      List<WeedPressure> otherWeeds,
      Journal otherJournal,
      Map<String, StationWeather> otherStations,
      List<Scouting> otherScoutings) {
    return new Book(
        name,
        season,
        catalog,
        house,
        crops,
        passCost,
        resprayExtra,
        otherFields,
        otherWeeds,
        otherJournal,
        pastSeasons,
        prices,
        otherStations,
        otherScoutings,
        notes);
  }
}
