package org.swathbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.draft.Walked;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.WeedOutcome;

/** What a program gives up, and saves, against the first one, in words. */
final class GivesUp {
  /**
   * Control that differs by less than this many points is the same to an adviser: default, ours.
   */
  private static final double SAME_CONTROL = 0.5;

  private GivesUp() {}

  static String against(Walked first, Walked other) {
    return against(
        Optional.of(other.cost().minus(first.cost())),
        Optional.of(other.net().minus(first.net())),
        first.outcome().weeds(),
        first.brokenNames(),
        other.outcome().weeds(),
        other.brokenNames());
  }

  static String against(PlannedProgram first, PlannedProgram other) {
    SeasonOutcome a = first.outcome();
    SeasonOutcome b = other.outcome();
    return against(
        b.cost().flatMap(m -> a.cost().map(m::minus)),
        b.net().flatMap(m -> a.net().map(m::minus)),
        a.weeds(),
        first.judgement().brokenNames(),
        b.weeds(),
        other.judgement().brokenNames());
  }

  private static String against(
      Optional<Money> cost,
      Optional<Money> net,
      List<WeedOutcome> first,
      List<String> firstBroken,
      List<WeedOutcome> other,
      List<String> otherBroken) {
    List<String> parts = new ArrayList<>();
    cost.filter(c -> c.cents() != 0)
        .ifPresent(
            c ->
                parts.add(
                    "costs $"
                        + new Money(Math.abs(c.cents()))
                        + (c.cents() > 0 ? " more" : " less")));
    net.ifPresent(
        n ->
            parts.add(
                n.cents() == 0
                    ? "same net return"
                    : "net $"
                        + new Money(Math.abs(n.cents()))
                        + (n.cents() > 0 ? " higher" : " lower")));
    for (int i = 0; i < other.size(); i++) {
      WeedOutcome w = other.get(i);
      WeedOutcome f = first.get(i);
      if (w.pressure().driver().isDriver()
          && Math.abs(w.controlPct() - f.controlPct()) >= SAME_CONTROL) {
        parts.add(
            w.pressure().weed().name()
                + " "
                + Numbers.fixed(w.controlPct(), 1)
                + " instead of "
                + Numbers.fixed(f.controlPct(), 1)
                + " %");
      }
    }
    List<String> more = otherBroken.stream().filter(r -> !firstBroken.contains(r)).toList();
    if (!more.isEmpty()) {
      parts.add("breaks " + String.join(" and ", more));
    }
    return String.join("; ", parts);
  }
}
