package org.swathbook.plan.exact;

import java.util.Arrays;

/**
 * What further passes may bring at most, each on a date of its own: the most that one pass brings
 * on a date, on as many of the best dates as passes are left.
 */
final class BestDates {
  private final double[] after;
  private final double[] beside;

  private BestDates(double[] after, double[] beside) {
    this.after = after;
    this.beside = beside;
  }

  /**
   * @param candidates by date
   * @param gain what each brings at most
   * @param passes how many more may come beside one of them
   */
  static BestDates of(
      BranchAndBound.Problem<?> problem, int[] candidates, double[] gain, int passes) {
    double[] onDate = new double[problem.dates()];
    for (int i = 0; i < candidates.length; i++) {
      int date = problem.placeOfDate(candidates[i]);
      onDate[date] = Math.max(onDate[date], gain[i]);
    }
    double[] after = new double[onDate.length];
    Top top = new Top(passes);
    for (int date = onDate.length - 1; date >= 0; date--) {
      after[date] = top.sum();
      top.add(onDate[date]);
    }
    double[] beside = new double[onDate.length];
    for (int date = 0; date < onDate.length; date++) {
      // The best of all dates, unless the date is one of them: then without it.
      beside[date] = top.sum();
    }
    if (passes > 0) {
      double[] sorted = onDate.clone();
      Arrays.sort(sorted);
      int n = sorted.length;
      double least = n > passes ? sorted[n - passes] : 0;
      double next = n > passes ? sorted[n - passes - 1] : 0;
      for (int date = 0; date < n; date++) {
        if (n <= passes) {
          beside[date] -= onDate[date];
        } else if (onDate[date] >= least) {
          beside[date] += next - onDate[date];
        }
      }
    }
    return new BestDates(after, beside);
  }

  /** With passes on later dates only. */
  double after(int date) {
    return after[date];
  }

  /** With passes on any other dates. */
  double beside(int date) {
    return beside[date];
  }

  /** The largest of the numbers met, none below 0. */
  private static final class Top {
    private final double[] values;

    Top(int many) {
      values = new double[many];
    }

    void add(double value) {
      int least = 0;
      for (int i = 1; i < values.length; i++) {
        least = values[i] < values[least] ? i : least;
      }
      if (values.length > 0 && value > values[least]) {
        values[least] = value;
      }
    }

    double sum() {
      double sum = 0;
      for (double v : values) {
        sum += v;
      }
      return sum;
    }
  }
}
