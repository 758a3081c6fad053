package org.swathbook.weather;

import java.time.LocalDate;
import java.util.Arrays;

/**
 * A series of daily temperatures with its gaps filled: a short gap by a straight line between its
 * neighbors, a long one by the mean of the same days of the calendar in other years.
 */
final class FilledSeries {
  private final double[] known;
  private final double[] filled;
  private final boolean[] isLong;
  private final boolean[] isGroundless;

  /**
   * @param known a value a day from the first date on, NaN for none; the first and last are known
   * @param lineDays longest gap for a straight line
   */
  FilledSeries(double[] known, LocalDate first, int lineDays) {
    this.known = known;
    this.filled = known.clone();
    this.isLong = new boolean[known.length];
    this.isGroundless = new boolean[known.length];
    double[] means = {};
    int d = 0;
    while (d < known.length) {
      if (!Double.isNaN(known[d])) {
        d++;
        continue;
      }
      int end = d;
      while (Double.isNaN(known[end])) {
        end++;
      }
      boolean tooLong = end - d > lineDays;
      if (tooLong && means.length == 0) {
        means = meansOfTheYear(known, first);
      }
      fill(d, end, tooLong, first, means);
      d = end;
    }
  }

  private void fill(int from, int end, boolean tooLong, LocalDate first, double[] means) {
    for (int d = from; d < end; d++) {
      isLong[d] = tooLong;
      double mean = tooLong ? means[dayOfYear(first.plusDays(d))] : Double.NaN;
      isGroundless[d] = tooLong && Double.isNaN(mean);
      double share = (d - from + 1.0) / (end - from + 1);
      filled[d] =
          Double.isNaN(mean) ? known[from - 1] + share * (known[end] - known[from - 1]) : mean;
    }
  }

  /** Means of the known values by day of the calendar; 29 February without any takes the 28th's. */
  private static double[] meansOfTheYear(double[] known, LocalDate first) {
    double[] sum = new double[367];
    int[] count = new int[367];
    for (int d = 0; d < known.length; d++) {
      if (!Double.isNaN(known[d])) {
        int day = dayOfYear(first.plusDays(d));
        sum[day] += known[d];
        count[day]++;
      }
    }
    double[] means = new double[367];
    Arrays.setAll(means, i -> count[i] > 0 ? sum[i] / count[i] : Double.NaN);
    int leapDay = dayOfYear(LocalDate.of(2000, 2, 29));
    if (Double.isNaN(means[leapDay])) {
      means[leapDay] = means[leapDay - 1];
    }
    return means;
  }

  /** Numbered as in a leap year, so that a date has one number in all years. */
  private static int dayOfYear(LocalDate date) {
    return date.withYear(2000).getDayOfYear();
  }

  double value(int day) {
    return filled[day];
  }

  boolean isKnown(int day) {
    return !Double.isNaN(known[day]);
  }

  /** Whether the day stands in a gap too long for a straight line. */
  boolean isInLongGap(int day) {
    return isLong[day];
  }

  /** Whether no other year has the day, so that the line had to do for a long gap too. */
  boolean isGroundless(int day) {
    return isGroundless[day];
  }
}
