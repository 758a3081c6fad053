package org.swathbook.plan;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.season.WeedOutcome;

/** What a program gives up, and saves, against the first one, in words. */
final class GivesUp {
  /**
   * Control that differs by less than this many points is the same to an adviser: default, ours.
   */
  private static final double SAME_CONTROL = 0.5;

  private GivesUp() {}

  static String against(Walked first, Walked other) {
    List<String> parts = new ArrayList<>();
    Money cost = other.cost().minus(first.cost());
    if (cost.cents() != 0) {
      parts.add(
          "costs $" + new Money(Math.abs(cost.cents())) + (cost.cents() > 0 ? " more" : " less"));
    }
    Money net = other.net().minus(first.net());
    parts.add(
        net.cents() == 0
            ? "same net return"
            : "net $"
                + new Money(Math.abs(net.cents()))
                + (net.cents() > 0 ? " higher" : " lower"));
    for (WeedOutcome w : other.outcome().weeds()) {
      WeedOutcome f = first.outcome().weed(w.pressure().weed().id());
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
    List<String> more =
        other.brokenNames().stream().filter(r -> !first.brokenNames().contains(r)).toList();
    if (!more.isEmpty()) {
      parts.add("breaks " + String.join(" and ", more));
    }
    return String.join("; ", parts);
  }
}
