package org.swathbook.plan.exact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.Walked;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * The trade-off between cost, expected loss and control with the worst site gone, over all programs
 * that a search met: those that no other is at least as good as in all three. Control counts in
 * whole steps of five points, for less is the same to an adviser.
 */
public final class Front {
  static final double STEP_POINTS = 5;

  private Front() {}

  /** By cost, cheapest first; of programs that are alike in all three the first by goal. */
  public static List<Walked> of(List<Walked> walked) {
    List<Walked> sorted =
        walked.stream()
            .sorted(
                Comparator.comparing(Walked::cost)
                    .thenComparing(w -> w.outcome().loss())
                    .thenComparing(Comparator.comparingInt(Front::level).reversed())
                    .thenComparing(Goal.BEST))
            .toList();
    List<Walked> kept = new ArrayList<>();
    for (Walked w : sorted) {
      // What comes later costs as much or more, so that it never beats what is kept.
      if (kept.stream().noneMatch(k -> isNoWorse(k, w))) {
        kept.add(w);
      }
    }
    return List.copyOf(kept);
  }

  private static boolean isNoWorse(Walked a, Walked b) {
    return a.cost().compareTo(b.cost()) <= 0
        && a.outcome().loss().compareTo(b.outcome().loss()) <= 0
        && level(a) >= level(b);
  }

  private static int level(Walked w) {
    return levelOf(weakest(w));
  }

  /** Whole steps of control with the worst site gone. */
  static int levelOf(double weakestPct) {
    return (int) Math.floor(weakestPct / STEP_POINTS);
  }

  /** Control of the driver weed that is held least with its worst site gone; 100 without one. */
  public static double weakest(Walked w) {
    return w.outcome().weeds().stream()
        .filter(o -> o.pressure().driver().isDriver())
        .mapToDouble(WeedOutcome::controlPctWithoutWeakest)
        .min()
        .orElse(100);
  }
}
