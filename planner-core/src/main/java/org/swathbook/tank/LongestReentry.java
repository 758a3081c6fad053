package org.swathbook.tank;

import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * Until when nobody may enter the field after spraying: the longest of all partners.
 *
 * @param hours longest that is stated, 0 where labels are known to have none; empty when no label
 *     states it
 * @param unknown actives of which it is not known, in the order of the alphabet: the true one may
 *     then be longer
 */
public record LongestReentry(OptionalDouble hours, List<String> unknown) {

  public LongestReentry {
    unknown = List.copyOf(unknown);
  }

  public static LongestReentry of(Collection<Partner> partners) {
    TreeSet<String> unknown = new TreeSet<>();
    double longest = -1;
    for (Partner p : partners) {
      if (p.terms().reentryHours().isUnknown()) {
        unknown.add(p.ingredient().name());
      } else {
        longest = Math.max(longest, p.terms().reentryHours().find().orElse(0.0));
      }
    }
    return new LongestReentry(
        longest < 0 ? OptionalDouble.empty() : OptionalDouble.of(longest), List.copyOf(unknown));
  }
}
