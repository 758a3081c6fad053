package org.swathbook.plan.exact;

import java.util.Random;

/**
 * A linear plan drawn from a seed: invented numbers of the shape that a field's real ones have. An
 * active works through the soil and has its best days around planting, or through the leaves and
 * has them in the crop, or both; each comes at a low and a high rate; some weeds resist it.
 */
final class LinearInstance {
  private static final double MILLIONTHS = 1e6;

  private LinearInstance() {}

  /**
   * @param options an even number up to 62
   */
  static LinearPlan draw(long seed, int dates, int options, int weeds, int maxPasses) {
    return draw(seed, dates, options, weeds, maxPasses, 1);
  }

  /**
   * @param share part of the usual needs, for plans with few options
   */
  static LinearPlan draw(
      long seed, int dates, int options, int weeds, int maxPasses, double share) {
    Random random = new Random(seed);
    int actives = options / 2;
    int[] day = new int[dates];
    for (int d = 0; d < dates; d++) {
      day[d] = -14 + d * 63 / (dates - 1) + random.nextInt(3);
    }
    int[] cost = new int[options];
    int[] active = new int[options];
    int[] milliLb = new int[options];
    int[] cap = new int[actives];
    int[] uses = new int[actives];
    int[] interval = new int[actives];
    boolean[][] legal = new boolean[dates][options];
    int[][][] kill = new int[dates][options][weeds];
    for (int a = 0; a < actives; a++) {
      boolean soil = random.nextInt(3) > 0;
      boolean leaves = !soil || random.nextInt(3) == 0;
      int low = 50 + random.nextInt(600);
      int high = low * (13 + random.nextInt(8)) / 10;
      double perLb = (6 + 14 * random.nextDouble()) * 100 / high;
      double[] neper = new double[weeds];
      for (int w = 0; w < weeds; w++) {
        neper[w] =
            random.nextInt(3) == 0 ? 0.1 * random.nextDouble() : 0.4 + 2 * random.nextDouble();
      }
      cap[a] = random.nextBoolean() ? high : low + high;
      uses[a] = 1 + random.nextInt(2);
      interval[a] = 7 * random.nextInt(4);
      for (int rate = 0; rate < 2; rate++) {
        int o = 2 * a + rate;
        active[o] = a;
        milliLb[o] = rate == 0 ? low : high;
        cost[o] = (int) Math.round(perLb * milliLb[o]);
        for (int d = 0; d < dates; d++) {
          double fits = 0;
          if (soil) {
            fits = Math.max(fits, 1 - Math.abs(day[d] - 5) / 40.0);
          }
          if (leaves) {
            fits = Math.max(fits, 1 - Math.abs(day[d] - 25) / 30.0);
          }
          legal[d][o] = fits > 0.15 && (soil && day[d] < 20 || leaves && day[d] > 5);
          for (int w = 0; w < weeds; w++) {
            double dose = (double) milliLb[o] / high;
            kill[d][o][w] = (int) Math.round(MILLIONTHS * neper[w] * fits * Math.sqrt(dose));
          }
        }
      }
    }
    long[] partners = new long[options];
    for (int a = 0; a < options; a++) {
      for (int b = 0; b < a; b++) {
        if (active[a] != active[b] && random.nextInt(5) > 0) {
          partners[a] |= 1L << b;
          partners[b] |= 1L << a;
        }
      }
    }
    int[] need = new int[weeds];
    for (int w = 0; w < weeds; w++) {
      // 95 to 99.5 % of the plants gone.
      need[w] =
          (int) Math.round(share * MILLIONTHS * -Math.log(0.05 - 0.045 * random.nextDouble()));
    }
    return new LinearPlan(
        day, cost, 900, legal, partners, kill, need, active, milliLb, cap, uses, interval,
        maxPasses, 3);
  }
}
