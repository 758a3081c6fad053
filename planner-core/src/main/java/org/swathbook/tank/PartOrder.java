package org.swathbook.tank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * One order out of guides that disagree: each pair of kinds goes as more of the guides have it, the
 * clearest majorities first, and a pair that would close a circle with those is left out (ranked
 * pairs: Tideman 1987, Independence of clones as a criterion for voting rules).
 */
final class PartOrder {
  private static final List<TankPart> IN_ORDER = inOrder(MixingGuide.ALL);

  /** A pair of kinds and by how many guides more the one goes before the other. */
  private record Pair(TankPart one, TankPart other, int majority) {}

  private PartOrder() {}

  /** The place of a kind, from 0. */
  static int place(TankPart part) {
    return IN_ORDER.indexOf(part);
  }

  /** All kinds as these guides have them; where they leave it open, in the order of the kinds. */
  static List<TankPart> inOrder(List<MixingGuide> guides) {
    Map<TankPart, Set<TankPart>> before = new EnumMap<>(TankPart.class);
    for (TankPart p : TankPart.values()) {
      before.put(p, EnumSet.noneOf(TankPart.class));
    }
    for (Pair p : pairs(guides)) {
      lock(before, p);
    }
    List<TankPart> out = new ArrayList<>();
    while (out.size() < before.size()) {
      before.entrySet().stream()
          .filter(e -> !out.contains(e.getKey()) && out.containsAll(e.getValue()))
          .findFirst()
          .map(Map.Entry::getKey)
          .ifPresent(out::add);
    }
    return List.copyOf(out);
  }

  /**
   * @param before all kinds that go before each, at any remove
   */
  private static void lock(Map<TankPart, Set<TankPart>> before, Pair pair) {
    Set<TankPart> first = Objects.requireNonNull(before.get(pair.one()));
    if (first.contains(pair.other())) {
      // Clearer majorities already have it the other way round.
      return;
    }
    before.forEach(
        (part, earlier) -> {
          if (part == pair.other() || earlier.contains(pair.other())) {
            earlier.add(pair.one());
            earlier.addAll(first);
          }
        });
  }

  private static List<Pair> pairs(List<MixingGuide> guides) {
    List<Pair> out = new ArrayList<>();
    for (TankPart one : TankPart.values()) {
      for (TankPart other : TankPart.values()) {
        int majority = votes(guides, one, other) - votes(guides, other, one);
        if (majority > 0) {
          out.add(new Pair(one, other, majority));
        }
      }
    }
    out.sort(
        Comparator.comparingInt((Pair p) -> -p.majority())
            .thenComparing(Pair::one)
            .thenComparing(Pair::other));
    return out;
  }

  private static int votes(List<MixingGuide> guides, TankPart one, TankPart other) {
    int votes = 0;
    for (MixingGuide g : guides) {
      votes += g.puts(one, other) ? 1 : 0;
    }
    return votes;
  }
}
