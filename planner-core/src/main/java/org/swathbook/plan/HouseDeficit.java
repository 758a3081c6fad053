package org.swathbook.plan;

import java.util.List;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.check.HouseRuleCheck;

/**
 * How far a season is from the house rules, 0 when it meets them: a missing site counts one, a week
 * of overlap one, ten points of exposure, control or confidence one. It lets the search feel half a
 * step towards a threshold.
 */
final class HouseDeficit {
  private HouseDeficit() {}

  static double of(List<BrokenHouseRule> broken) {
    double sum = 0;
    for (BrokenHouseRule b : broken) {
      double missed = Math.abs(b.limit() - b.actual());
      sum +=
          switch (b.name()) {
            case HouseRuleCheck.MIN_FOLIAR_SITES, HouseRuleCheck.MIN_SOIL_SITES -> missed;
            case HouseRuleCheck.MIN_LAYER_OVERLAP -> missed / 7;
            default -> missed / 10;
          };
    }
    return sum;
  }
}
