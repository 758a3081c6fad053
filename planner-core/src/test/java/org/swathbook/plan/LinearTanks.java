package org.swathbook.plan;

import java.util.ArrayList;
import java.util.List;

/** Every tank that a linear plan allows on each date, by date and then by option. */
final class LinearTanks {
  final LinearPlan plan;
  final int[][] options;
  final int[] date;
  final int[] cents;

  /** By tank, then by weed, all in one row. */
  private final int[] kills;

  private final int weeds;

  LinearTanks(LinearPlan plan) {
    this.plan = plan;
    List<int[]> tanks = new ArrayList<>();
    List<Integer> dates = new ArrayList<>();
    for (int d = 0; d < plan.dates(); d++) {
      grow(tanks, d, new int[0], 0);
      while (dates.size() < tanks.size()) {
        dates.add(d);
      }
    }
    int n = tanks.size();
    this.options = tanks.toArray(new int[0][]);
    this.date = dates.stream().mapToInt(Integer::intValue).toArray();
    this.cents = new int[n];
    this.weeds = plan.weeds();
    this.kills = new int[n * weeds];
    for (int c = 0; c < n; c++) {
      cents[c] = plan.passCents();
      for (int o : options[c]) {
        cents[c] += plan.costCents()[o];
        for (int w = 0; w < weeds; w++) {
          kills[c * weeds + w] += plan.kill()[date[c]][o][w];
        }
      }
    }
  }

  private void grow(List<int[]> out, int date, int[] tank, int from) {
    for (int o = from; o < plan.options(); o++) {
      if (plan.legal()[date][o] && takes(tank, o)) {
        int[] longer = java.util.Arrays.copyOf(tank, tank.length + 1);
        longer[tank.length] = o;
        out.add(longer);
        if (longer.length < plan.maxProducts()) {
          grow(out, date, longer, o + 1);
        }
      }
    }
  }

  private boolean takes(int[] tank, int option) {
    for (int o : tank) {
      if (!plan.mix(o, option)) {
        return false;
      }
    }
    return true;
  }

  int kill(int tank, int weed) {
    return kills[tank * weeds + weed];
  }

  int size() {
    return options.length;
  }

  /** Whether caps, counts and intervals let these tanks follow each other; by date. */
  boolean areLegal(int[] tanks) {
    int actives = plan.actives();
    int[] sum = new int[actives];
    int[] uses = new int[actives];
    int[] last = new int[actives];
    for (int t : tanks) {
      int day = plan.day()[date[t]];
      for (int o : options[t]) {
        int a = plan.active()[o];
        sum[a] += plan.milliLb()[o];
        if (sum[a] > plan.capMilliLb()[a]
            || ++uses[a] > plan.mostUses()[a]
            || uses[a] > 1 && day - last[a] < plan.leastDays()[a]) {
          return false;
        }
        last[a] = day;
      }
    }
    return true;
  }

  /** What a tank takes of what is left, at some prices. */
  double saved(int tank, int[] left, double[] price) {
    double sum = 0;
    int at = tank * weeds;
    for (int w = 0; w < weeds; w++) {
      sum += price[w] * Math.min(left[w], kills[at + w]);
    }
    return sum;
  }

  int cents(int[] program) {
    int sum = 0;
    for (int t : program) {
      sum += cents[t];
    }
    return sum;
  }

  /** What a program leaves of each need. */
  int[] left(int[] program) {
    int[] out = plan.need().clone();
    for (int t : program) {
      for (int w = 0; w < out.length; w++) {
        out[w] = Math.max(0, out[w] - kill(t, w));
      }
    }
    return out;
  }

  boolean meets(int[] program) {
    for (int left : left(program)) {
      if (left > 0) {
        return false;
      }
    }
    return true;
  }
}
