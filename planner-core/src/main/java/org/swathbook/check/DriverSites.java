package org.swathbook.check;

import java.util.Map;
import java.util.TreeMap;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.WeedId;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.PassFacts;
import org.swathbook.season.outcome.PassWeed;

/**
 * How many effective foliar sites a tank has on each driver weed that stands when it is sprayed: at
 * its height that day, and of plants that may resist.
 *
 * @param foliar whether anything in the tank works through leaves
 */
record DriverSites(Map<WeedId, Integer> counts, boolean foliar) {

  DriverSites {
    counts = Map.copyOf(counts);
  }

  static DriverSites of(PassFacts facts) {
    Map<WeedId, Integer> out = new TreeMap<>();
    for (PassWeed w : facts.pass().weeds()) {
      // A driver weed counts in the years in which it stands, however few they are.
      if (w.standsInAnyYear() && facts.pressure(w.weed()).driver().isDriver()) {
        out.put(w.weed(), w.effectiveFoliarSites());
      }
    }
    return new DriverSites(
        out,
        facts.actives().stream()
            .map(ActiveUse::ingredient)
            .anyMatch(Ingredient::hasFoliarActivity));
  }

  /**
   * Sites that another tank for the same weeds has less than this one, over all of them; where this
   * one is for leaves and works on none, another that works on none lacks one.
   */
  int lackedBy(DriverSites other) {
    int lacked = 0;
    int there = 0;
    for (Map.Entry<WeedId, Integer> e : counts.entrySet()) {
      int then = other.counts.getOrDefault(e.getKey(), 0);
      lacked += Math.max(0, e.getValue() - then);
      there += then;
    }
    return foliar && !counts.isEmpty() && there == 0 ? Math.max(1, lacked) : lacked;
  }
}
