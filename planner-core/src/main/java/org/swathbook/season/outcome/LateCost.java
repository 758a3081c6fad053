package org.swathbook.season.outcome;

import org.swathbook.measure.Money;

/**
 * What the plants that stand when a pass comes have already cost the crop, all weeds together, mean
 * of the years in which it comes: lost even where the pass kills every one of them.
 *
 * @param lossShare of the yield, 0 to 1; nothing before the crop is up
 * @param perDayLater what the next day adds, on one acre
 */
public record LateCost(double lossShare, Money perDayLater) {
  public static final LateCost NONE = new LateCost(0, Money.ZERO);
}
