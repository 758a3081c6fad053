package org.swathbook.growth;

import java.util.EnumSet;
import java.util.Set;
import org.swathbook.catalog.Position;

/** Where a day stands in the life of the crop. */
public final class Phases {
  private Phases() {}

  /**
   * Before the crop is up, over it until harvest, or when no crop stands: after harvest, and in the
   * calendar year before the one in which the crop is planted.
   */
  public static Position.Phase of(SeasonTrace trace, int day) {
    if (day > trace.harvestDay() || isAutumnBefore(trace, day)) {
      return Position.Phase.AFTER_HARVEST;
    }
    return day < trace.emergenceDay() ? Position.Phase.BEFORE_EMERGENCE : Position.Phase.IN_CROP;
  }

  /**
   * Positions of uses that a spraying on this day can be. Until planting it is burndown and
   * preplant, from planting until the crop is up burndown and pre; on the planting day itself all
   * three, since the sprayer may go before or behind the planter.
   */
  public static Set<Position> positions(SeasonTrace trace, int day) {
    return switch (of(trace, day)) {
      case AFTER_HARVEST -> EnumSet.of(Position.STUBBLE, Position.FALL);
      case IN_CROP -> EnumSet.of(Position.POST, Position.LAY_BY, Position.HARVEST_AID);
      case BEFORE_EMERGENCE -> beforeEmergence(trace, day);
    };
  }

  private static Set<Position> beforeEmergence(SeasonTrace trace, int day) {
    Set<Position> out = EnumSet.of(Position.BURNDOWN);
    if (day <= trace.plantingDay()) {
      out.add(Position.PREPLANT);
    }
    if (day >= trace.plantingDay()) {
      out.add(Position.PRE);
    }
    return out;
  }

  private static boolean isAutumnBefore(SeasonTrace trace, int day) {
    return day < trace.plantingDay()
        && trace.dateOf(day).getYear() < trace.dateOf(trace.plantingDay()).getYear();
  }
}
