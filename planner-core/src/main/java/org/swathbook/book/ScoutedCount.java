package org.swathbook.book;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How many plants of a weed stood.
 *
 * @param areaM2 ground on which they were counted; empty when only the density was written
 */
public record ScoutedCount(double perM2, OptionalDouble areaM2) {

  /**
   * Plants per m² over several zones: all plants over all ground where every zone names its ground,
   * else the plain mean of the densities.
   */
  public static double meanPerM2(List<ScoutedCount> zones) {
    boolean grounds = zones.stream().allMatch(z -> z.areaM2().isPresent());
    double plants = 0;
    double ground = 0;
    for (ScoutedCount z : zones) {
      double weight = grounds ? z.areaM2().orElseThrow() : 1;
      plants += z.perM2() * weight;
      ground += weight;
    }
    return plants / ground;
  }
}
