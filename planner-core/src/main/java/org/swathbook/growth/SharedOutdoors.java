package org.swathbook.growth;

import java.time.LocalDate;
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
  private static final int SEASONS_KEPT = 1000;

  private final Map<Soil, SoilAge.Parameters> known = new ConcurrentHashMap<>();

  private record Season(String station, int year, int season, LocalDate observedTo) {}

  private final Kept<Season, SeasonHeat> seasons = new Kept<>(SEASONS_KEPT);

  /** The days of a weather year that nobody edits. */
  SeasonHeat season(StationWeather station, int year, int season, LocalDate observedTo) {
    return seasons.get(
        new Season(station.id(), year, season, observedTo),
        k -> new SeasonHeat(ScenarioDays.of(station, year, season, observedTo, WeatherEdit.NONE)));
  }

  private record Soil(String station, SoilTexture texture, double latitude) {}

  /** Fields and their seasons mostly come one after the other, so few are kept. */
  private final Kept<Topsoil.Parameters, Topsoil> topsoils = new Kept<>(SOILS_KEPT);

  Topsoil topsoil(SoilTexture texture, double latitude) {
    return topsoils.get(Topsoil.Parameters.of(texture, latitude), Topsoil::new);
  }

  SoilAge.Parameters ageing(
      StationWeather station, SoilTexture texture, double latitude, Topsoil topsoil) {
    return known.computeIfAbsent(
        new Soil(station.id(), texture, latitude),
        k -> new SoilAge.Parameters(SoilAge.reference(station, topsoil)));
  }
}
