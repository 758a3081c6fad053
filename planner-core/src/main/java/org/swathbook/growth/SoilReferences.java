package org.swathbook.growth;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.weather.StationWeather;

/**
 * How fast soil actives age in the weeks that stated lengths are for, by station and soil. It takes
 * all years of a station to know, and many fields of a book ask the same. One of these serves the
 * stations of one book; several threads may use it.
 */
public final class SoilReferences {
  private static final int SOILS_KEPT = 500;

  private final Map<Soil, SoilAge.Parameters> known = new ConcurrentHashMap<>();

  private record Soil(String station, SoilTexture texture, double latitude) {}

  /** Fields and their seasons mostly come one after the other, so few are kept. */
  private final Cache<Topsoil.Parameters, Topsoil> topsoils =
      Caffeine.newBuilder().maximumSize(SOILS_KEPT).executor(Runnable::run).build();

  Topsoil topsoil(SoilTexture texture, double latitude) {
    return topsoils.get(Topsoil.Parameters.of(texture, latitude), Topsoil::new);
  }

  SoilAge.Parameters of(
      StationWeather station, SoilTexture texture, double latitude, Topsoil topsoil) {
    return known.computeIfAbsent(
        new Soil(station.id(), texture, latitude),
        k -> new SoilAge.Parameters(SoilAge.reference(station, topsoil)));
  }
}
