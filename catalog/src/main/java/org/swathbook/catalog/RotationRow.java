package org.swathbook.catalog;

import java.time.MonthDay;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.measure.Period;
import org.swathbook.measure.Rate;

/**
 * A row of a next-crop interval. Every condition that is given must hold, and the first match wins.
 *
 * @param when soil on which the row applies
 * @param formulations formulation codes sprayed; empty for any
 * @param trait trait or seed treatment of the crop to be planted
 * @param sprayedAfter sprayed later in the year than this day
 * @param rateAbove sprayed at more than this rate
 * @param interval {@link Period#NONE} for a known absence of any interval
 * @param rainMm rain and irrigation that must fall before the interval starts to count
 */
public record RotationRow(
    SoilCondition when,
    Set<String> formulations,
    Optional<Trait> trait,
    Optional<MonthDay> sprayedAfter,
    Optional<Rate> rateAbove,
    Period interval,
    OptionalDouble rainMm) {

  public RotationRow {
    formulations = Ordered.set(formulations);
  }
}
