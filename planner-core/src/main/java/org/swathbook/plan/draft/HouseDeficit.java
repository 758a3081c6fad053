package org.swathbook.plan.draft;

import java.util.List;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;

/**
 * How far a season is from the house rules, 0 when it meets them: a missing site counts one, a week
 * of overlap one, ten points of exposure, control or confidence one. It lets the search feel half a
 * step towards a threshold.
 */
public final class HouseDeficit {
  private HouseDeficit() {}

  public static double of(List<BrokenHouseRule> broken) {
    double sum = 0;
    for (BrokenHouseRule b : broken) {
      sum += of(b.name(), missed(b.limit(), b.actual()));
    }
    return sum;
  }

  /** All of the limit where there is no actual value: layers that never come in one year. */
  static double missed(double limit, double actual) {
    return Double.isNaN(actual) ? limit : limit - actual;
  }

  /**
   * Of one rule.
   *
   * @param missed by how much, either way: sites, days or percent
   */
  public static double of(String rule, double missed) {
    return switch (rule) {
      case HouseRuleCheck.MIN_FOLIAR_SITES, HouseRuleCheck.MIN_SOIL_SITES -> Math.abs(missed);
      case HouseRuleCheck.MIN_LAYER_OVERLAP -> Math.abs(missed) / 7;
      default -> Math.abs(missed) / 10;
    };
  }
}
