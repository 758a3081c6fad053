package org.swathbook.audit;

import java.util.Collection;

/**
 * How many equally used sites would be as diverse as those that were used: Hill numbers (Hill 1973,
 * Ecology 54:427-432; Jost 2006, Oikos 113:363-375; both from memory). They come from ecology; no
 * weed paper that uses them for sites of action was found.
 */
public final class HillNumber {
  private HillNumber() {}

  /**
   * Order 1, exp(-Σ p ln p).
   *
   * @param weights of sites, not negative, in any unit; shares of their sum count
   * @return 0 when nothing weighs anything
   */
  public static double shannon(Collection<Double> weights) {
    double sum = sum(weights);
    double entropy = 0;
    for (double w : weights) {
      if (w > 0) {
        entropy -= w / sum * Math.log(w / sum);
      }
    }
    return sum > 0 ? Math.exp(entropy) : 0;
  }

  /** Order 2, the inverse of Simpson's index: 1 / Σ p². Arguments as for order 1. */
  public static double inverseSimpson(Collection<Double> weights) {
    double sum = sum(weights);
    double squares = 0;
    for (double w : weights) {
      squares += sum > 0 ? w / sum * (w / sum) : 0;
    }
    return squares > 0 ? 1 / squares : 0;
  }

  private static double sum(Collection<Double> weights) {
    double sum = 0;
    for (double w : weights) {
      if (!(w >= 0)) {
        throw new IllegalArgumentException("a weight is not negative, not " + w);
      }
      sum += w;
    }
    return sum;
  }
}
