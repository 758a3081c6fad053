package org.swathbook.plan.draft;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What the search climbs, in dollars per acre: the net return, less a fine for every house rule
 * that is broken and a smaller one for how far it is missed, so that half a step towards a
 * threshold already counts. The fines steer the search only; what is shown is chosen by {@link
 * #BEST}.
 */
public final class Goal {
  /** Above any gain that breaking a rule could bring on row crops: default, ours. */
  private static final double PER_RULE = 400;

  private static final double PER_DEFICIT = 60;

  /** What was asked for goes before all house rules. */
  static final double PER_WISH = 5000;

  private Goal() {}

  /**
   * Fewest wishes unmet, then fewest house rules broken, then by how far in whole steps (a pass
   * with one of two sites goes before one with none), then highest net return, lowest cost, and a
   * fixed order of drafts.
   */
  public static final Comparator<Walked> BEST =
      Comparator.comparingInt(Walked::lacking)
          .thenComparingInt(Walked::brokenRules)
          .thenComparingInt(w -> (int) w.deficit())
          .thenComparing(Comparator.comparing(Walked::net).reversed())
          .thenComparing(Walked::cost)
          .thenComparing(Walked::key);

  /** What would be taken of a program that misses so much. */
  static double fine(List<Missed> missed) {
    Set<String> rules = new HashSet<>();
    double deficit = 0;
    for (Missed m : missed) {
      rules.add(m.rule());
      deficit += m.deficit();
    }
    return PER_RULE * rules.size() + PER_DEFICIT * deficit;
  }

  public static double of(Walked w) {
    return w.net().dollars()
        - PER_WISH * w.lacking()
        - PER_RULE * w.brokenRules()
        - PER_DEFICIT * w.deficit();
  }
}
