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
  private final int[] candidates;
  private final int passes;
  private final double[] onDate;
  private final int[] bestOnDate;

  /** Cents a millionth, by weed, and the cents that everything still to come costs at least. */
  @SuppressWarnings("ArrayRecordComponent")
  record Prices(double[] centsPerUnit, double bound) {}

  private LinearPrices(LinearTanks tanks, int[] left, int[] candidates, int passes) {
    this.tanks = tanks;
    this.left = left;
    this.candidates = candidates;
    this.passes = passes;
    this.onDate = new double[tanks.plan.dates()];
    this.bestOnDate = new int[tanks.plan.dates()];
  }

  /**
   * @param start prices to begin with
   * @param steps most steps
   * @param enough a bound above which no step is worth its time
   */
  static Prices raise(
      LinearTanks tanks,
      int[] left,
      int[] candidates,
      int passes,
      double[] start,
      int steps,
      double enough) {
    return new LinearPrices(tanks, left, candidates, passes).raise(start, steps, enough);
  }

  private Prices raise(double[] start, int steps, double enough) {
    double[] now = start.clone();
    double[] slope = new double[left.length];
    Prices best = new Prices(start, Double.NEGATIVE_INFINITY);
    double scale = 1;
    for (int step = 0; step < steps && best.bound() < enough; step++) {
      double bound = bound(now, slope);
      if (bound > best.bound()) {
        best = new Prices(now.clone(), bound);
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
      double aim = Math.min(enough, 1.3 * Math.abs(bound) + 500);
      double move = scale * Math.max(50, aim - bound) / length;
      for (int w = 0; w < now.length; w++) {
        now[w] = Math.max(0, now[w] + move * slope[w]);
      }
    }
    return best;
  }

  /** The bound at some prices; its slope is what the tanks that it takes leave. */
  private double bound(double[] price, double[] slope) {
    Arrays.fill(onDate, 0);
    Arrays.fill(bestOnDate, -1);
    for (int c : candidates) {
      double gain = tanks.saved(c, left, price) - tanks.cents[c];
      if (gain > onDate[tanks.date[c]]) {
        onDate[tanks.date[c]] = gain;
        bestOnDate[tanks.date[c]] = c;
      }
    }
    double bound = 0;
    for (int w = 0; w < price.length; w++) {
      bound += price[w] * left[w];
      slope[w] = left[w];
    }
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
}
