package org.swathbook.plan.exact;

/**
 * What further passes may bring at most on the dates after one, each on a date of its own: the most
 * that one pass brings on a date, on as many of the best later dates as passes are left.
 */
final class LaterDates {
  private LaterDates() {}

  /**
   * @param some places of candidates, by date
   * @param gain what each of them brings at most, never counted below 0
   * @param passes how many further ones there may be
   * @return by the place of a date, what the dates after it bring together
   */
  static double[] after(Candidates candidates, int[] some, double[] gain, int passes) {
    double[] onDate = new double[candidates.dates()];
    for (int i = 0; i < some.length; i++) {
      int date = candidates.placeOfDate(some[i]);
      onDate[date] = Math.max(onDate[date], gain[i]);
    }
    double[] after = new double[onDate.length];
    double[] best = new double[passes];
    for (int date = onDate.length - 1; date >= 0; date--) {
      for (double b : best) {
        after[date] += b;
      }
      int least = 0;
      for (int i = 1; i < passes; i++) {
        least = best[i] < best[least] ? i : least;
      }
      if (passes > 0 && onDate[date] > best[least]) {
        best[least] = onDate[date];
      }
    }
    return after;
  }
}
