package org.swathbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.swathbook.season.WeedOutcome;

/**
 * The trade-off between cost, expected loss and control with the worst site gone, over all programs
 * that a search met: those that no other is at least as good as in all three. Control counts in
 * whole steps of five points, for less is the same to an adviser.
 */
final class Front {
  static final double STEP_POINTS = 5;

  private Front() {}

  /** By cost, cheapest first; of programs that are alike in all three the first by goal. */
  static List<FrontProgram> of(List<Walked> walked) {
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
    return kept.stream().map(Front::figures).toList();
  }

  private static FrontProgram figures(Walked w) {
    return new FrontProgram(
        w.outcome().passes().stream()
            .map(
                p ->
                    new FrontProgram.Trip(
                        p.planned(), p.mix().doses().stream().map(d -> d.product().id()).toList()))
            .toList(),
        w.cost(),
        w.outcome().loss(),
        w.outcome().net(),
        weakest(w),
        w.brokenNames());
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
  static double weakest(Walked w) {
    return w.outcome().weeds().stream()
        .filter(o -> o.pressure().driver().isDriver())
        .mapToDouble(WeedOutcome::controlPctWithoutWeakest)
        .min()
        .orElse(100);
  }
}
