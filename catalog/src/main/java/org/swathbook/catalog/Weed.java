package org.swathbook.catalog;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * A weed with its emergence, growth, competition and seed.
 *
 * @param sources by path, of the values that keep no source of their own, {@code height.r}
 */
public record Weed(
    WeedId id,
    String name,
    String latin,
    List<String> aliases,
    WeedKind kind,
    String family,
    String genus,
    Emergence emergence,
    HeightCurve height,
    Map<CropId, Competition> competition,
    SeedBiology seed,
    Map<String, Source> sources,
    LocalDate reviewed) {

  public Weed {
    aliases = List.copyOf(aliases);
    competition = Ordered.map(competition);
    sources = Ordered.map(sources);
  }
}
