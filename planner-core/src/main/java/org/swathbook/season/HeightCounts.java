package org.swathbook.season;

import org.swathbook.control.HeightClasses;

/** Plants/m² of one weed by their classes of height. */
final class HeightCounts {
  /** So that a sum in another order does not go one plant further. */
  static final double ROUNDING = 1 - 1e-12;

  private final double[] perM2 = new double[HeightClasses.COUNT];
  private double all;

  /** All plants of a biotype that a walk sees standing on a day. */
  void add(Kernel kernel, int day, StandingCohorts up) {
    double[] plants = up.perM2(kernel, day);
    for (int i = 0; i < plants.length; i++) {
      if (plants[i] > 0) {
        add(plants[i], up.heightClass()[up.from() + i]);
      }
    }
  }

  void add(double plants, int heightClass) {
    perM2[Math.min(HeightClasses.COUNT - 1, heightClass)] += plants;
    all += plants;
  }

  double perM2() {
    return all;
  }

  /**
   * Class that a share of the plants, 0 to 1 by number, does not exceed; 0 when none stand. Within
   * a rounding it is the class of the height that they do not exceed: taller plants have no lower
   * one.
   */
  int percentileClass(double share) {
    double sum = 0;
    int last = 0;
    for (int k = 0; k < perM2.length; k++) {
      if (perM2[k] > 0) {
        sum += perM2[k];
        last = k;
        if (sum >= share * all * ROUNDING) {
          return k;
        }
      }
    }
    return last;
  }
}
