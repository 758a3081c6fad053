package org.swathbook.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Middle values over the weather years. */
final class Medians {
  private Medians() {}

  /** Mean of the two middle ones where there are two. */
  static double of(double[] values) {
    double[] sorted = Arrays.copyOf(values, values.length);
    Arrays.sort(sorted);
    int n = sorted.length;
    return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  }

  /** The lower one of two. */
  static LocalDate of(List<LocalDate> dates) {
    List<LocalDate> sorted = new ArrayList<>(dates);
    Collections.sort(sorted);
    return sorted.get((sorted.size() - 1) / 2);
  }
}
