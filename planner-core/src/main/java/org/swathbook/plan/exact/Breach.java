package org.swathbook.plan.exact;

import java.util.Set;
import java.util.TreeSet;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.LoneSites;

/**
 * House rules that passes break, and by how far: what {@code HouseDeficit} says of a walked season,
 * added up pass by pass. More passes break more, never less.
 *
 * @param rules names of those broken
 * @param sites by how far sites and overlaps are missed
 * @param windows by how far the windows are missed, of the whole program
 * @param lone the foliar sites on which the passes last rested alone, which decide what later ones
 *     owe
 */
record Breach(Set<String> rules, double sites, double windows, LoneSites lone) {

  /** Sums that stand for one another are taken in different orders. */
  private static final double SUMS = 1e-9;

  Breach {
    rules = Set.copyOf(rules);
  }

  /** Of passes that break nothing. */
  static Breach none(LoneSites lone) {
    return new Breach(Set.of(), 0, 0, lone);
  }

  Breach with(String rule, double by) {
    return new Breach(and(rule), sites + by, windows, lone);
  }

  Breach with(LoneSites restedOn) {
    return new Breach(rules, sites, windows, restedOn);
  }

  /** The windows of one more pass are missed by so much in place of what was missed before it. */
  Breach withWindows(double by) {
    return new Breach(and(HouseRuleCheck.WINDOW_CONFIDENCE), sites, by, lone);
  }

  private Set<String> and(String rule) {
    Set<String> out = new TreeSet<>(rules);
    out.add(rule);
    return out;
  }

  /** By how far in whole steps, never more than a walk of the season says. */
  int steps() {
    return (int) Math.floor(Math.max(0, sites + windows - SUMS));
  }
}
