package org.swathbook.season;

import java.util.Arrays;

/** Order statistics over weather years. */
final class Stats {
  private Stats() {}

  /** Middle value, the upper of two; NaN of nothing. */
  static double upperMedian(double[] values) {
    return at(values, values.length / 2);
  }

  /** Mean of the two middle values, or the middle one; NaN of nothing. */
  static double median(double[] values) {
    return (at(values, (values.length - 1) / 2) + at(values, values.length / 2)) / 2;
  }

  /** The value that one year in five reaches or tops. */
  static double worstFifth(double[] values) {
    return at(values, values.length - Math.max(1, values.length / 5));
  }

  private static double at(double[] values, int rank) {
    if (values.length == 0) {
      return Double.NaN;
    }
    double[] sorted = Arrays.copyOf(values, values.length);
    Arrays.sort(sorted);
    return sorted[rank];
  }
}
