package org.swathbook.growth;

/**
 * How many plants of a weed come up on each day of a weather year.
 *
 * <p>The density of a field is the season's whole emergence without control, so the days of every
 * year are scaled to add up to it, whatever dry soil and canopy kept down ({@link Seedlings}):
 * these shift plants between days and make no season emptier. A year in which nothing came up at
 * all stays empty.
 */
final class SeedlingDays {
  private SeedlingDays() {}

  /**
   * Plants per m² by day, adding up to the density: in the very array of the shares, which nobody
   * needs any more.
   *
   * @param emerging share that comes up by day, whatever it adds up to
   */
  static double[] perM2(double[] emerging, double density) {
    double total = 0;
    for (double share : emerging) {
      total += share;
    }
    double perShare = density / total;
    for (int d = 0; total > 0 && d < emerging.length; d++) {
      emerging[d] *= perShare;
    }
    return emerging;
  }

  /** First day by which a share of all plants is up; the last day when none came up. */
  static int dayOfShare(double[] perM2, double share) {
    double total = 0;
    for (double n : perM2) {
      total += n;
    }
    double sum = 0;
    for (int d = 0; d < perM2.length; d++) {
      sum += perM2[d];
      if (sum > 0 && sum >= share * total) {
        return d;
      }
    }
    return perM2.length - 1;
  }
}
