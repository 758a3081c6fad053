package org.swathbook.season;

import java.util.Arrays;
import java.util.List;

/**
 * What one dose on one date does to each cohort of a field at most, as natural logarithms: of what
 * its soil effect leaves, and of what it leaves of the plants whose leaves it reaches, both
 * negated. Cohorts have the places of {@link SeasonReach}; those that it does nothing to are not
 * kept.
 */
public final class Reach {
  private final int[] soilAt;
  private final double[] soil;
  private final int[] leavesAt;
  private final double[] leaves;

  private Reach(int[] soilAt, double[] soil, int[] leavesAt, double[] leaves) {
    this.soilAt = soilAt;
    this.soil = soil;
    this.leavesAt = leavesAt;
    this.leaves = leaves;
  }

  /**
   * @param soil by cohort, 0 where it does nothing; {@code leaves} the same
   */
  static Reach of(double[] soil, double[] leaves) {
    int[] soilAt = places(soil);
    int[] leavesAt = places(leaves);
    return new Reach(soilAt, at(soil, soilAt), leavesAt, at(leaves, leavesAt));
  }

  private static int[] places(double[] all) {
    int[] out = new int[all.length];
    int n = 0;
    for (int c = 0; c < all.length; c++) {
      if (all[c] > 0) {
        out[n++] = c;
      }
    }
    return Arrays.copyOf(out, n);
  }

  private static double[] at(double[] all, int[] places) {
    return Arrays.stream(places).mapToDouble(c -> all[c]).toArray();
  }

  /**
   * Of doses of one site in one tank, of which only the strongest counts on each plant.
   *
   * @param counts by cohort, whether the tank goes out in its year
   */
  static Reach strongest(List<Reach> ofOneSite, boolean[] counts) {
    double[] soil = new double[counts.length];
    double[] leaves = new double[counts.length];
    for (Reach r : ofOneSite) {
      raise(soil, r.soilAt, r.soil);
      raise(leaves, r.leavesAt, r.leaves);
    }
    for (int c = 0; c < counts.length; c++) {
      if (!counts[c]) {
        soil[c] = 0;
        leaves[c] = 0;
      }
    }
    return of(soil, leaves);
  }

  private static void raise(double[] to, int[] places, double[] values) {
    for (int i = 0; i < places.length; i++) {
      to[places[i]] = Math.max(to[places[i]], values[i]);
    }
  }

  /** Whether it does anything through leaves. */
  public boolean isOnLeaves() {
    return leavesAt.length > 0;
  }

  /** What its soil effect is worth at prices by cohort. */
  public double soilAt(double[] prices) {
    return dot(soilAt, soil, prices);
  }

  /** What its effect on leaves is worth at prices by cohort. */
  public double leavesAt(double[] prices) {
    return dot(leavesAt, leaves, prices);
  }

  private static double dot(int[] places, double[] values, double[] prices) {
    double sum = 0;
    for (int i = 0; i < places.length; i++) {
      sum += values[i] * prices[places[i]];
    }
    return sum;
  }

  /** Adds a share of its soil effect to sums by cohort. */
  public void addSoil(double[] to, double share) {
    add(to, soilAt, soil, share);
  }

  /** Adds a share of its effect on leaves to sums by cohort. */
  public void addLeaves(double[] to, double share) {
    add(to, leavesAt, leaves, share);
  }

  private static void add(double[] to, int[] places, double[] values, double share) {
    for (int i = 0; i < places.length; i++) {
      to[places[i]] += share * values[i];
    }
  }
}
