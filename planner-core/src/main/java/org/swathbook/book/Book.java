package org.swathbook.book;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.CropId;
import org.swathbook.measure.Money;
import org.swathbook.program.FieldId;
import org.swathbook.weather.StationWeather;

/** An adviser's book for one season, read and checked. Fields are in the order of their file. */
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
    Map<String, StationWeather> stations) {

  public Book {
    crops = Map.copyOf(crops);
    fields = List.copyOf(fields);
    weeds = List.copyOf(weeds);
    pastSeasons = List.copyOf(pastSeasons);
    stations = Map.copyOf(stations);
  }

  public Optional<Field> findField(String typed) {
    return fields.stream().filter(f -> f.id().matches(typed)).findFirst();
  }

  /** Weeds of a field in the order of their file. */
  public List<WeedPressure> weedsOf(FieldId field) {
    return weeds.stream().filter(w -> w.field().equals(field)).toList();
  }

  public StationWeather station(Field field) {
    StationWeather s = stations.get(field.station());
    if (s == null) {
      throw new IllegalArgumentException("no weather for station " + field.station());
    }
    return s;
  }
}
