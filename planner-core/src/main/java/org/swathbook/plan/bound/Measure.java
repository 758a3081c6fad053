package org.swathbook.plan.bound;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.swathbook.catalog.Site;

/**
 * What a blend of programs leaves of something that cohorts bring, and what each effect saves of
 * it: a convex function of what the blend does.
 *
 * <p>Of a cohort is left {@code w (m + (1 - m) exp(-s)) Π (1 - r (1 - exp(-q / y)))^y}: w what it
 * brings without a pass, s the sum of soil effects; of each day q the sum of effects on leaves, y
 * the share of programs with a pass on it, r the share that a pass reaches. The logarithm of each
 * factor is convex in s, or in q and y together – the last is the perspective of a convex function
 * (Günlük & Linderoth 2010, Mathematical Programming 124: 183-205, from memory) – and for a program
 * that is sprayed whole (y 0 or 1) it is what its tanks leave. So the logarithm of all that is left
 * is convex, and so is a sum, or a convex function that rises with the logarithm of one.
 */
final class Measure {
  private final AllDoses all;
  private final int[] cohorts;
  private final double[] brings;
  private final Function<Day, double[]> reach;
  private final Optional<Site> without;
  private final Total total;

  /** What is made of the sums of the years. */
  interface Total {
    double of(double[] byYear);

    /** By how much it rises with each year's sum. */
    double[] slopes(double[] byYear);
  }

  /**
   * @param brings by cohort
   * @param reach of a day, by cohort
   * @param without a site that does nothing
   */
  Measure(
      AllDoses all,
      double[] brings,
      Function<Day, double[]> reach,
      Optional<Site> without,
      Total total) {
    this.all = all;
    this.brings = brings;
    this.cohorts = IntStream.range(0, brings.length).filter(c -> brings[c] > 0).toArray();
    this.reach = reach;
    this.without = without;
    this.total = total;
  }

  /** What a blend leaves. */
  Left of(Blend blend) {
    return new Left(blend.sums(all, without));
  }

  /** What a blend leaves of each cohort. */
  final class Left {
    private final Blend.Sums sums;

    /** By cohort, the share of what is left that the soil can still take. */
    private final double[] inSoil;

    private final double[] left;
    private final double[] byYear;

    private Left(Blend.Sums sums) {
      this.sums = sums;
      this.inSoil = new double[brings.length];
      this.left = new double[brings.length];
      this.byYear = new double[all.years()];
      double missed = all.reach().missedInSoil();
      double[] onLeaves = onLeaves();
      for (int c : cohorts) {
        double reached = (1 - missed) * Math.exp(-sums.soil(c));
        left[c] = brings[c] * (missed + reached) * Math.exp(onLeaves[c]);
        byYear[all.yearOf(c)] += left[c];
        inSoil[c] = missed + reached > 0 ? reached / (missed + reached) : 1;
      }
    }

    private double[] onLeaves() {
      double[] out = new double[brings.length];
      for (int d = 0; d < all.days().size(); d++) {
        double share = sums.passes(d);
        if (share > 0 && sums.isOnLeaves(d)) {
          double[] r = reach.apply(all.days().get(d));
          for (int c : cohorts) {
            double q = sums.leaves(d, c);
            if (q > 0 && r[c] > 0) {
              out[c] += share * log(r[c], q / share);
            }
          }
        }
      }
      return out;
    }

    /** All of it. */
    double total() {
      return total.of(byYear);
    }

    /**
     * Adds what each effect saves, and what a pass changes.
     *
     * @param worth dollars of a unit of the total
     */
    void addTo(Prices prices, double worth) {
      double[] slopes = total.slopes(byYear);
      double[] each = new double[brings.length];
      for (int c : cohorts) {
        each[c] = worth * slopes[all.yearOf(c)] * left[c];
        prices.addSoil(without, c, each[c] * inSoil[c]);
      }
      for (int d = 0; d < all.days().size(); d++) {
        double[] r = reach.apply(all.days().get(d));
        double share = sums.isOnLeaves(d) ? sums.passes(d) : 0;
        double pass = 0;
        for (int c : cohorts) {
          if (r[c] > 0) {
            double at = share > 0 ? sums.leaves(d, c) / share : 0;
            double slope = slope(r[c], at);
            prices.addLeaves(without, d, c, each[c] * slope);
            pass += at > 0 ? each[c] * (log(r[c], at) + at * slope) : 0;
          }
        }
        prices.addPass(d, pass);
      }
    }
  }

  /** Logarithm of what a pass leaves of which it reaches a share. */
  private static double log(double reached, double effect) {
    double lives = lives(reached, effect);
    return lives > 0 ? Math.log(lives) : -effect;
  }

  /** By how much it falls with the effect. */
  private static double slope(double reached, double effect) {
    double lives = lives(reached, effect);
    return lives > 0 ? reached * Math.exp(-effect) / lives : 1;
  }

  private static double lives(double reached, double effect) {
    return 1 - reached + reached * Math.exp(-effect);
  }
}
