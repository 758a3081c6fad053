package org.swathbook.season;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Site;

/**
 * What one pass does to each weed, found when first asked for; two threads may both find it, and
 * find the same.
 */
final class PassSteps {
  /** More than the highest number of a site. */
  private static final int SITES = 64;

  /** A final field, so that another thread sees what is in it; null for what does nothing. */
  record Leaf(@Nullable LeafStep step) {}

  record Soil(@Nullable SoilStep step) {}

  private final @Nullable Leaf[] leaf;
  private final @Nullable Soil[] soil;
  private final Map<Integer, Leaf> leafWithout = new ConcurrentHashMap<>();
  private final Map<Integer, Soil> soilWithout = new ConcurrentHashMap<>();

  PassSteps(int weeds) {
    this.leaf = new Leaf[weeds];
    this.soil = new Soil[weeds];
  }

  @Nullable LeafStep leaf(Kernel kernel, PreparedPass pass, int weed, Optional<Site> without) {
    if (without.isPresent() && pass.effect().has(without.get())) {
      int key = weed * SITES + without.get().number();
      Leaf known = leafWithout.get(key);
      if (known == null) {
        known = new Leaf(kernel.kept().same(LeafStep.of(kernel, pass, weed, without)));
        leafWithout.put(key, known);
      }
      return known.step();
    }
    Leaf found = leaf[weed];
    if (found == null) {
      found = new Leaf(kernel.kept().same(LeafStep.of(kernel, pass, weed, Optional.empty())));
      leaf[weed] = found;
    }
    return found.step();
  }

  @Nullable SoilStep soil(Kernel kernel, PreparedPass pass, int weed, Optional<Site> without) {
    if (without.isPresent() && pass.effect().has(without.get())) {
      int key = weed * SITES + without.get().number();
      Soil known = soilWithout.get(key);
      if (known == null) {
        known = new Soil(kernel.kept().same(SoilStep.of(kernel, pass, weed, without)));
        soilWithout.put(key, known);
      }
      return known.step();
    }
    Soil found = soil[weed];
    if (found == null) {
      found = new Soil(kernel.kept().same(SoilStep.of(kernel, pass, weed, Optional.empty())));
      soil[weed] = found;
    }
    return found.step();
  }
}
