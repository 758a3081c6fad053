package org.swathbook.plan.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.swathbook.catalog.Site;
import org.swathbook.season.Reach;

/**
 * Doses that go out together.
 *
 * @param day place among the days
 * @param cost dollars on an acre with the pass, mean of the years in which it goes out
 * @param reach by site, what its doses do at most
 */
record Tank(int day, List<Part> parts, double cost, Map<Site, Reach> reach) {

  static Tank of(AllDoses all, List<Part> parts) {
    return new Tank(parts.get(0).day(), List.copyOf(parts), cost(all, parts), reach(all, parts));
  }

  /** Years in which the tank cannot go out: those in which one of its doses cannot. */
  static Set<Integer> missed(List<Part> parts) {
    if (parts.stream().allMatch(p -> p.missed().isEmpty())) {
      return Set.of();
    }
    TreeSet<Integer> out = new TreeSet<>();
    parts.forEach(p -> out.addAll(p.missed()));
    return out;
  }

  /** Dollars on an acre, mean of the years in which it goes out. */
  static double cost(AllDoses all, List<Part> parts) {
    double cost = all.passCost();
    for (Part p : parts) {
      cost += p.cost();
    }
    return cost * (all.years() - missed(parts).size()) / all.years();
  }

  private static Map<Site, Reach> reach(AllDoses all, List<Part> parts) {
    Set<Integer> missed = missed(parts);
    Map<Site, Reach> out = new TreeMap<>();
    bySite(parts).forEach((site, of) -> out.put(site, all.strongest(of, missed)));
    return out;
  }

  private static Map<Site, List<Part>> bySite(List<Part> parts) {
    Map<Site, List<Part>> out = new TreeMap<>();
    for (Part p : parts) {
      out.computeIfAbsent(p.site(), s -> new ArrayList<>()).add(p);
    }
    return out;
  }
}
