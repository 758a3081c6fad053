package org.swathbook.season.outcome;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.growth.PassTiming;
import org.swathbook.measure.Money;
import org.swathbook.program.Mix;

/**
 * A pass of a walked program.
 *
 * @param index place in the order of the dates, from 0
 * @param earliest and {@code latest}: spray days of all years as dates of the book's season
 * @param cropStage name of the stage in the median year
 * @param missedYears years in which it lay outside a label window or found no suitable day: no
 *     effect, no cost
 * @param cost products on one acre; empty when a product has no price
 * @param weeds in the order of the field's list
 * @param late what the plants that stand when it comes have cost by then
 * @param made it is a fact, made on its very date in every year
 */
public record PassOutcome(
    int index,
    LocalDate planned,
    PassTiming timing,
    LocalDate earliest,
    LocalDate latest,
    int daysAfterPlanting,
    String cropStage,
    Mix mix,
    List<Integer> missedYears,
    Optional<Money> cost,
    List<PassWeed> weeds,
    LateCost late,
    boolean made) {

  public PassOutcome {
    missedYears = List.copyOf(missedYears);
    weeds = List.copyOf(weeds);
  }

  /** The same, taken for a fact or for a plan. */
  public PassOutcome asMade(boolean fact) {
    return new PassOutcome(
        index,
        planned,
        timing,
        earliest,
        latest,
        daysAfterPlanting,
        cropStage,
        mix,
        missedYears,
        cost,
        weeds,
        late,
        fact);
  }
}
