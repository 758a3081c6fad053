package org.swathbook.growth;

import java.util.OptionalDouble;

/** How tall the plants are that stand on a day when nothing was sprayed, by number. */
public final class StandingSize {
  private StandingSize() {}

  /**
   * Height in cm that a share of the standing plants does not exceed; empty when none stands.
   * Tillage at planting has taken its part from that day on.
   *
   * @param weed place in the field's list
   * @param percentile share of the plants, 0 to 1
   */
  public static OptionalDouble percentileCm(
      SeasonTrace trace, int weed, int day, double percentile) {
    CohortSet cohorts = trace.cohorts(weed);
    double all = 0;
    for (int c = 0; c < cohorts.count(); c++) {
      all += standing(trace, cohorts, c, day);
    }
    if (!(all > 0)) {
      return OptionalDouble.empty();
    }
    // Later cohorts are never taller, so the count runs from the last one up to the first.
    double sum = 0;
    double height = 0;
    for (int c = cohorts.count() - 1; c >= 0; c--) {
      double n = standing(trace, cohorts, c, day);
      if (n > 0) {
        sum += n;
        height = cohorts.heightCm(c, day);
        if (sum >= percentile * all * (1 - 1e-12)) {
          return OptionalDouble.of(height);
        }
      }
    }
    return OptionalDouble.of(height);
  }

  private static double standing(SeasonTrace trace, CohortSet cohorts, int cohort, int day) {
    if (cohorts.emergedOn(cohort) > day) {
      return 0;
    }
    double n = cohorts.perM2(cohort);
    return day >= trace.plantingDay() ? n * cohorts.tillageSurvival(cohort) : n;
  }
}
