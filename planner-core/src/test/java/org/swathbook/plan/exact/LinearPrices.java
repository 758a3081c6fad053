package org.swathbook.plan.exact;

import java.util.Arrays;

/**
 * Prices of what is left of each need, such that a program loses by what it leaves and a bound on
 * the cost of all programs follows: whatever the prices, what is left at its price, less the most
 * that tanks of different dates save beyond their cost (Lagrangian relaxation; Geoffrion 1974,
 * Mathematical Programming Study 2: 82-114, from memory). Subgradients make the bound higher.
 */
final class LinearPrices {
  private final LinearTanks tanks;
  private final int[] left;
  private final int passes;
  private final double[] gain;
  private final double[] onDate;
  private final int[] bestOnDate;

  /** Tanks that no price on the way has shown to be too dear. */
  private int[] candidates;

  /**
   * @param centsPerUnit cents a millionth, by weed
   * @param bound cents that everything still to come costs at least
   * @param candidates tanks with which it may come to less than is too dear
   */
  @SuppressWarnings("ArrayRecordComponent")
  record Prices(double[] centsPerUnit, double bound, int[] candidates) {}

  private LinearPrices(LinearTanks tanks, int[] left, int[] candidates, int passes) {
    this.tanks = tanks;
    this.left = left;
    this.candidates = candidates;
    this.passes = passes;
    this.gain = new double[candidates.length];
    this.onDate = new double[tanks.plan.dates()];
    this.bestOnDate = new int[tanks.plan.dates()];
  }

  /**
   * @param start prices to begin with
   * @param steps most steps
   * @param tooDear cents; a program that costs so much is of no interest
   */
  static Prices raise(
      LinearTanks tanks,
      int[] left,
      int[] candidates,
      int passes,
      double[] start,
      int steps,
      double tooDear) {
    return new LinearPrices(tanks, left, candidates, passes).raise(start, steps, tooDear);
  }

  private Prices raise(double[] start, int steps, double tooDear) {
    double[] now = start.clone();
    double[] slope = new double[left.length];
    double[] best = start;
    double highest = Double.NEGATIVE_INFINITY;
    double scale = 1;
    for (int step = 0; step < steps && highest < tooDear; step++) {
      double bound = bound(now, slope, tooDear);
      if (bound > highest) {
        best = now.clone();
        highest = bound;
      } else {
        scale *= 0.7;
      }
      double length = 0;
      for (double s : slope) {
        length += s * s;
      }
      if (length == 0) {
        break;
      }
      double aim = Math.min(tooDear, 1.3 * Math.abs(bound) + 500);
      double move = scale * Math.max(50, aim - bound) / length;
      for (int w = 0; w < now.length; w++) {
        now[w] = Math.max(0, now[w] + move * slope[w]);
      }
    }
    return new Prices(best, highest, candidates);
  }

  /** The bound at some prices; its slope is what the tanks that it takes leave. */
  private double bound(double[] price, double[] slope, double tooDear) {
    Arrays.fill(onDate, 0);
    Arrays.fill(bestOnDate, -1);
    for (int i = 0; i < candidates.length; i++) {
      int c = candidates[i];
      gain[i] = tanks.saved(c, left, price) - tanks.cents[c];
      if (gain[i] > onDate[tanks.date[c]]) {
        onDate[tanks.date[c]] = gain[i];
        bestOnDate[tanks.date[c]] = c;
      }
    }
    double bound = 0;
    for (int w = 0; w < price.length; w++) {
      bound += price[w] * left[w];
      slope[w] = left[w];
    }
    sieve(bound, tooDear);
    for (int k = 0; k < passes; k++) {
      int top = 0;
      for (int d = 1; d < onDate.length; d++) {
        top = onDate[d] > onDate[top] ? d : top;
      }
      if (onDate[top] > 0) {
        bound -= onDate[top];
        onDate[top] = 0;
        for (int w = 0; w < slope.length; w++) {
          slope[w] -= Math.min(left[w], tanks.kill(bestOnDate[top], w));
        }
      }
    }
    return bound;
  }

  /** Leaves out the tanks with which, at these prices, everything is too dear. */
  private void sieve(double ifNothingComes, double tooDear) {
    double[] least = new double[onDate.length];
    for (int d = 0; d < least.length; d++) {
      least[d] = ifNothingComes - mostBeside(d);
    }
    int kept = 0;
    int[] some = new int[candidates.length];
    for (int i = 0; i < candidates.length; i++) {
      if (least[tanks.date[candidates[i]]] - gain[i] < tooDear) {
        some[kept++] = candidates[i];
      }
    }
    candidates = kept < some.length ? Arrays.copyOf(some, kept) : candidates;
  }

  /** What tanks of other dates than this save at most beyond their cost. */
  private double mostBeside(int date) {
    double[] others = onDate.clone();
    others[date] = 0;
    Arrays.sort(others);
    double sum = 0;
    for (int k = 1; k < passes && k <= others.length; k++) {
      sum += others[others.length - k];
    }
    return sum;
  }
}
