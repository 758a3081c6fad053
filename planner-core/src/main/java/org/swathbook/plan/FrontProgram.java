package org.swathbook.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Money;
import org.swathbook.plan.draft.Walked;
import org.swathbook.plan.exact.Front;

/**
 * A program that no other met beats in cost, in expected loss and in control with the site missed
 * most gone, all at once. It holds figures only, so that plans of hundreds of fields fit into
 * memory.
 *
 * @param cost of passes and products on an acre, mean over the years
 * @param loss expected yield loss on an acre
 * @param net expected net return of an acre; empty without a price
 * @param weakestControlPct lowest control of a driver weed with the site gone that is missed most;
 *     100 without a driver weed
 * @param brokenRules names of the house rules that it breaks
 */
public record FrontProgram(
    List<Trip> passes,
    Money cost,
    Money loss,
    Optional<Money> net,
    double weakestControlPct,
    List<String> brokenRules) {

  public FrontProgram {
    passes = List.copyOf(passes);
    brokenRules = List.copyOf(brokenRules);
  }

  static FrontProgram of(Walked w) {
    return new FrontProgram(
        w.outcome().passes().stream()
            .map(
                p ->
                    new Trip(
                        p.planned(), p.mix().doses().stream().map(d -> d.product().id()).toList()))
            .toList(),
        w.cost(),
        w.outcome().loss(),
        w.outcome().net(),
        Front.weakest(w),
        w.brokenNames());
  }

  /** What goes on when. */
  public record Trip(LocalDate planned, List<ProductId> products) {

    public Trip {
      products = List.copyOf(products);
    }
  }
}
