package org.swathbook.plan.exact;

import java.util.Arrays;

/**
 * A good program of a linear plan, by exchanges of one tank at a time: what the branch and bound is
 * to beat, as it is to beat the best that the climb met in a field. What is left of a need is fined
 * more and more dearly.
 */
final class LinearClimb {
  private static final double[] FINES = {1.5, 4, 20};

  /** Cents for any need that is not met, however little is left of it. */
  private static final double PER_NEED = 100;

  private static final int MOST_STEPS = 30;

  private final LinearTanks tanks;
  private final double[] price;

  private LinearClimb(LinearTanks tanks, double[] price) {
    this.tanks = tanks;
    // A need that has no price where the bound is highest must be met all the same.
    double mean = Arrays.stream(price).average().orElse(0);
    this.price = Arrays.stream(price).map(p -> p + mean / 4).toArray();
  }

  /** The cheapest program met that meets the needs; one that does not when none did. */
  static int[] top(LinearTanks tanks, double[] price) {
    LinearClimb climb = new LinearClimb(tanks, price);
    int[] here = new int[0];
    int[] best = here;
    for (double fine : FINES) {
      here = climb.climb(here, fine);
      if (tanks.meets(here) && (!tanks.meets(best) || tanks.cents(here) < tanks.cents(best))) {
        best = here;
      }
    }
    return best;
  }

  private int[] climb(int[] start, double fine) {
    int[] here = start;
    double cost = goal(here, fine);
    for (int step = 0; step < MOST_STEPS; step++) {
      int[] best = here;
      for (int place = 0; place <= here.length; place++) {
        int[] others = without(here, place);
        if (others.length < tanks.plan.maxPasses()) {
          best = bestWith(others, fine, best, cost);
          cost = goal(best, fine);
        }
      }
      if (best == here) {
        return here;
      }
      here = best;
    }
    return here;
  }

  private int[] bestWith(int[] others, double fine, int[] known, double knownCost) {
    int[] left = tanks.left(others);
    int cents = tanks.cents(others);
    int[] best = known;
    double least = knownCost;
    for (int c = 0; c < tanks.size(); c++) {
      double cost = cents + tanks.cents[c];
      for (int w = 0; w < left.length; w++) {
        cost += fine(fine, w, left[w] - tanks.kill(c, w));
      }
      if (cost < least - 1e-6) {
        int[] with = with(others, c);
        if (with.length > others.length && tanks.areLegal(with)) {
          best = with;
          least = cost;
        }
      }
    }
    return best;
  }

  private double goal(int[] program, double fine) {
    double out = tanks.cents(program);
    int[] left = tanks.left(program);
    for (int w = 0; w < left.length; w++) {
      out += fine(fine, w, left[w]);
    }
    return out;
  }

  private double fine(double fine, int weed, int left) {
    return left > 0 ? fine * (PER_NEED + price[weed] * left) : 0;
  }

  private static int[] without(int[] program, int place) {
    int[] out = new int[place < program.length ? program.length - 1 : program.length];
    for (int i = 0, at = 0; i < program.length; i++) {
      if (i != place) {
        out[at++] = program[i];
      }
    }
    return out;
  }

  /** In the order of dates, which is that of the tanks; the same when the date is taken. */
  private int[] with(int[] program, int tank) {
    for (int t : program) {
      if (tanks.date[t] == tanks.date[tank]) {
        return program;
      }
    }
    int[] out = Arrays.copyOf(program, program.length + 1);
    out[program.length] = tank;
    Arrays.sort(out);
    return out;
  }
}
