package org.swathbook.growth;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.weather.StationWeather;

/**
 * What the outdoors of many fields have in common. By station and soil, how fast soil actives age
 * in the weeks that stated lengths are for, which takes all years of a station to know; by soil,
 * its topsoil; by season of a station, its days and their heat. One of these serves the stations of
 * one book; several threads may use it.
 */
public final class SharedOutdoors {
  private static final int SOILS_KEPT = 500;
  private static final int SEASONS_KEPT = 200;

  private final Map<List<Object>, SoilAge.Parameters> known = new ConcurrentHashMap<>();
  private final Map<String, ReferenceWeeks> weeks = new ConcurrentHashMap<>();

  // Keys of several things are lists of them: as records they would have to be linked at every
  // start.
  private final Kept<List<Object>, SeasonHeat> seasons = new Kept<>(SEASONS_KEPT);

  /** The days of a weather year that nobody edits. */
  SeasonHeat season(StationWeather station, int year, int season, LocalDate observedTo) {
    List<Object> key = List.of(station.id(), year, season, observedTo);
    SeasonHeat known = seasons.find(key);
    return known != null
        ? known
        : seasons.get(
            key,
            k ->
                new SeasonHeat(
                    ScenarioDays.of(station, year, season, observedTo, WeatherEdit.NONE)));
  }

  /** Fields and their seasons mostly come one after the other, so few are kept. */
  private final Kept<List<Object>, Topsoil> topsoils = new Kept<>(SOILS_KEPT);

  Topsoil topsoil(SoilTexture texture, double latitude) {
    List<Object> key = List.of(texture, latitude);
    Topsoil known = topsoils.find(key);
    return known != null
        ? known
        : topsoils.get(key, k -> new Topsoil(Topsoil.Parameters.of(texture, latitude)));
  }

  SoilAge.Parameters ageing(
      StationWeather station, SoilTexture texture, double latitude, Topsoil topsoil) {
    List<Object> key = List.of(station.id(), texture, latitude);
    SoilAge.Parameters made = known.get(key);
    return made != null
        ? made
        : known.computeIfAbsent(
            key,
            k ->
                new SoilAge.Parameters(
                    weeks
                        .computeIfAbsent(station.id(), s -> new ReferenceWeeks(station))
                        .meanActivity(topsoil)));
  }
}
