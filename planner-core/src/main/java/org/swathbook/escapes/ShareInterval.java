package org.swathbook.escapes;

import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * A share of counted plants with its exact two-sided 95 % interval: Clopper and Pearson 1934,
 * Biometrika 26, 404-413, by quantiles of the Beta distribution. All are 0 to 1.
 */
public record ShareInterval(double share, double low, double high) {
  private static final double TAIL = 0.025;

  /**
   * @throws IllegalArgumentException when nothing was counted, or more hits than plants
   */
  public static ShareInterval of(int hits, int all) {
    if (all < 1 || hits < 0 || hits > all) {
      throw new IllegalArgumentException(hits + " of " + all + " is no share");
    }
    double low = hits == 0 ? 0 : beta(hits, all - hits + 1, TAIL);
    double high = hits == all ? 1 : beta(hits + 1, all - hits, 1 - TAIL);
    return new ShareInterval((double) hits / all, low, high);
  }

  private static double beta(int a, int b, double p) {
    // Without a random generator: the distribution is only asked for quantiles.
    return new BetaDistribution(null, a, b).inverseCumulativeProbability(p);
  }
}
