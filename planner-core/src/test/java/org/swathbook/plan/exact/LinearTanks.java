package org.swathbook.plan.exact;

import java.util.ArrayList;
import java.util.Arrays;
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

  /** By tank, a bit for each of its options. */
  private final long[] bits;

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
    this.bits = new long[n];
    this.kills = new int[n * weeds];
    for (int c = 0; c < n; c++) {
      cents[c] = plan.passCents();
      for (int o : options[c]) {
        cents[c] += plan.costCents()[o];
        bits[c] |= 1L << o;
        for (int w = 0; w < weeds; w++) {
          kills[c * weeds + w] += plan.kill()[date[c]][o][w];
        }
      }
    }
  }

  private void grow(List<int[]> out, int date, int[] tank, int from) {
    for (int o = from; o < plan.options(); o++) {
      if (plan.legal()[date][o] && mayBeUsed(o) && takes(tank, o)) {
        int[] longer = Arrays.copyOf(tank, tank.length + 1);
        longer[tank.length] = o;
        out.add(longer);
        if (longer.length < plan.maxProducts()) {
          grow(out, date, longer, o + 1);
        }
      }
    }
  }

  private boolean mayBeUsed(int option) {
    int a = plan.active()[option];
    return plan.milliLb()[option] <= plan.capMilliLb()[a] && plan.mostUses()[a] > 0;
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
  boolean areLegal(int[] program) {
    Season season = new Season();
    for (int t : program) {
      if (!season.takes(t)) {
        return false;
      }
      season.add(t);
    }
    return true;
  }

  /** Those of some later tanks that caps, counts and intervals still allow after a program. */
  int[] legalAfter(int[] program, int[] some) {
    if (program.length == 0) {
      return some;
    }
    Season season = new Season();
    for (int t : program) {
      season.add(t);
    }
    long[] gone = new long[plan.dates()];
    for (int d = 0; d < gone.length; d++) {
      gone[d] = season.gone(d);
    }
    int[] out = new int[some.length];
    int n = 0;
    for (int t : some) {
      if ((bits[t] & gone[date[t]]) == 0) {
        out[n++] = t;
      }
    }
    return Arrays.copyOf(out, n);
  }

  /** What tanks have used up of caps and counts, by active, and when last. */
  private final class Season {
    private final int[] milliLb = new int[plan.actives()];
    private final int[] uses = new int[plan.actives()];
    private final int[] lastDay = new int[plan.actives()];

    /** A tank holds an active once: no two rates of it may stand beside each other. */
    boolean takes(int tank) {
      for (int o : options[tank]) {
        if (!takes(o, date[tank])) {
          return false;
        }
      }
      return true;
    }

    private boolean takes(int option, int date) {
      int a = plan.active()[option];
      return milliLb[a] + plan.milliLb()[option] <= plan.capMilliLb()[a]
          && uses[a] + 1 <= plan.mostUses()[a]
          && (uses[a] == 0 || plan.day()[date] - lastDay[a] >= plan.leastDays()[a]);
    }

    /** A bit for each option that may not come on a later date. */
    long gone(int date) {
      long out = 0;
      for (int o = 0; o < plan.options(); o++) {
        if (!takes(o, date)) {
          out |= 1L << o;
        }
      }
      return out;
    }

    void add(int tank) {
      for (int o : options[tank]) {
        int a = plan.active()[o];
        milliLb[a] += plan.milliLb()[o];
        uses[a]++;
        lastDay[a] = plan.day()[date[tank]];
      }
    }
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

  /** Whether a tank alone takes all that is left. */
  boolean meets(int tank, int[] left) {
    int at = tank * weeds;
    for (int w = 0; w < weeds; w++) {
      if (kills[at + w] < left[w]) {
        return false;
      }
    }
    return true;
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
