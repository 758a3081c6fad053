package org.swathbook.season.loss;

import org.jspecify.annotations.Nullable;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;

/**
 * Who bears the cost of plants that a count has replaced. A plant alive at harvest costs 1; by a
 * day it has cost the share of late removal. The cohorts that were up bear what they had cost by
 * the day of the count, those of the count the rest. Shares are those of bare ground whatever lies
 * in it, so that no layer can make a count cost more.
 */
public final class CountCosts {
  private final double[] begun;
  private final double[] left;

  private CountCosts(double[] begun, double[] left) {
    this.begun = begun;
    this.left = left;
  }

  /** Null where nothing was counted. */
  public static @Nullable CountCosts of(
      SeasonTrace trace, CohortSet set, int harvest, Removal removal) {
    double[] begun = new double[set.count()];
    double[] left = new double[set.count()];
    int ended = set.endedBy(harvest);
    boolean any = ended > 0;
    for (int c = 0; c < begun.length; c++) {
      any |= set.isCounted(c);
      begun[c] = set.isCounted(c) ? cost(trace, set.emergedOn(c), removal) : 0;
      left[c] = Math.max(0, (c < ended ? cost(trace, set.endsOn(c), removal) : 1) - begun[c]);
    }
    return any ? new CountCosts(begun, left) : null;
  }

  private static double cost(SeasonTrace trace, int day, Removal removal) {
    return day >= trace.emergenceDay() ? removal.share(trace.leafStages(day), false) : 0;
  }

  /** What a plant of a cohort has cost since it stands for others, when it has cost so much. */
  public double since(int cohort, double already) {
    return already - begun[cohort];
  }

  /** Cost of a plant that lives from the beginning of the cohort to its end or to harvest. */
  public double left(int cohort) {
    return left[cohort];
  }
}
