package org.swathbook.growth;

import java.util.OptionalDouble;
import java.util.stream.IntStream;

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
    int tilledOn = trace.plantingDay();
    double all = 0;
    for (int c = 0; c < cohorts.count(); c++) {
      all += cohorts.standing(c, day, tilledOn);
    }
    if (!(all > 0)) {
      return OptionalDouble.empty();
    }
    double sum = 0;
    double height = 0;
    for (int c : shortestFirst(cohorts, day)) {
      double n = cohorts.standing(c, day, tilledOn);
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

  /** Later cohorts are never taller, unless somebody has seen otherwise. */
  private static int[] shortestFirst(CohortSet cohorts, int day) {
    int last = cohorts.count() - 1;
    IntStream latestFirst = IntStream.rangeClosed(0, last).map(c -> last - c);
    return cohorts.isScouted()
        ? latestFirst
            .boxed()
            .sorted((a, b) -> Double.compare(cohorts.age(a, day), cohorts.age(b, day)))
            .mapToInt(Integer::intValue)
            .toArray()
        : latestFirst.toArray();
  }
}
