package org.swathbook.catalog.file;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.HarvestLimit;
import org.swathbook.catalog.Stated;
import org.swathbook.source.MapReader;
import org.swathbook.source.Texts;

/** Reads how long before each kind of harvest a use may be made. */
final class HarvestReader {
  private final Entry entry;

  HarvestReader(Entry entry) {
    this.entry = entry;
  }

  Map<Commodity, Stated<HarvestLimit>> read(MapReader m, Place place) {
    Map<Commodity, Stated<HarvestLimit>> out = new LinkedHashMap<>();
    Optional<MapReader> map = m.findMap("intervals", "intervals: {grain: 70 days}");
    if (map.isEmpty()) {
      return out;
    }
    for (Commodity c : Commodity.values()) {
      String key = c.name().toLowerCase(Locale.ROOT);
      if (map.get().has(key)) {
        out.put(
            c,
            entry.stated(
                map.get(),
                key,
                place.then("intervals"),
                "days before " + key,
                HarvestReader::harvestLimit,
                "70 days"));
      }
    }
    map.get().done();
    return out;
  }

  private static HarvestLimit harvestLimit(String text) {
    return text.strip().equals("refused")
        ? new HarvestLimit(0, true)
        : new HarvestLimit(Texts.days(text), false);
  }
}
