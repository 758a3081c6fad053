package org.swathbook.season;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.control.SharedEffects;
import org.swathbook.growth.HeightModel;

/**
 * What the kernels of many fields have in common: effects that rest on no field's outdoors, and how
 * weeds grow tall. One of these serves one catalog; several threads may use it.
 */
public final class SharedKernels {
  private final SharedEffects effects;
  private final Map<WeedId, HeightClock> clocks = new ConcurrentHashMap<>();

  public SharedKernels(Catalog catalog) {
    this.effects = new SharedEffects(catalog);
  }

  SharedEffects effects() {
    return effects;
  }

  HeightClock clock(Weed weed, HeightModel model) {
    return clocks.computeIfAbsent(weed.id(), k -> new HeightClock(model));
  }
}
