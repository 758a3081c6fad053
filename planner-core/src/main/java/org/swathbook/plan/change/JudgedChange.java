package org.swathbook.plan.change;

import java.util.List;
import java.util.Optional;
import org.swathbook.check.Judgement;
import org.swathbook.measure.Money;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * A change to a program, walked and judged.
 *
 * @param mends names of the house rules that are no longer broken for a weed, each once
 * @param breaks names of those that it breaks instead
 * @param cost what it adds to the cost of an acre, an unplanned trip's extra with it; empty when a
 *     price is missing
 * @param near that an added pass comes nearer to another than the house asks; its rule is one of
 *     {@code breaks}
 * @param net what it adds to the net return of an acre
 */
public record JudgedChange(
    SingleChange change,
    SeasonOutcome outcome,
    Judgement judgement,
    List<String> mends,
    List<String> breaks,
    Optional<NearPass> near,
    Optional<Money> cost,
    Optional<Money> net) {

  public JudgedChange {
    mends = List.copyOf(mends);
    breaks = List.copyOf(breaks);
  }
}
