package org.swathbook.plan;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.season.SeasonOutcome;
import org.swathbook.season.WeedOutcome;

/** What a program gives up, and saves, against the first one, in words. */
final class GivesUp {
  /**
   * Control that differs by less than this many points is the same to an adviser: default, ours.
   */
  private static final double SAME_CONTROL = 0.5;

  private GivesUp() {}

  static String against(Walked first, Walked other) {
    return against(first.outcome(), first.brokenNames(), other.outcome(), other.brokenNames());
  }

  static String against(PlannedProgram first, PlannedProgram other) {
    return against(
        first.outcome(),
        first.judgement().brokenNames(),
        other.outcome(),
        other.judgement().brokenNames());
  }

  private static String against(
      SeasonOutcome first,
      List<String> firstBroken,
      SeasonOutcome other,
      List<String> otherBroken) {
    List<String> parts = new ArrayList<>();
    Money cost = other.cost().orElseThrow().minus(first.cost().orElseThrow());
    if (cost.cents() != 0) {
      parts.add(
          "costs $" + new Money(Math.abs(cost.cents())) + (cost.cents() > 0 ? " more" : " less"));
    }
    Money net = other.net().orElseThrow().minus(first.net().orElseThrow());
    parts.add(
        net.cents() == 0
            ? "same net return"
            : "net $"
                + new Money(Math.abs(net.cents()))
                + (net.cents() > 0 ? " higher" : " lower"));
    for (WeedOutcome w : other.weeds()) {
      WeedOutcome f = first.weed(w.pressure().weed().id());
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
