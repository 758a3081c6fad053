package org.swathbook.season.outcome;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Money;
import org.swathbook.program.Program;

/**
 * A program walked through every weather year.
 *
 * @param cost products and passes on one acre, mean over the years (a missed pass costs nothing);
 *     empty when a product has no price
 * @param loss expected yield loss on one acre
 * @param untreatedLoss the same with no pass at all
 * @param net yield goal times price less loss and cost
 * @param windowConfidencePct share of years in which every pass met its windows
 */
public record SeasonOutcome(
    Program program,
    List<PassOutcome> passes,
    List<YearOutcome> years,
    List<WeedOutcome> weeds,
    Optional<Money> cost,
    Money loss,
    Money untreatedLoss,
    Optional<Money> net,
    double windowConfidencePct) {

  public SeasonOutcome {
    passes = List.copyOf(passes);
    years = List.copyOf(years);
    weeds = List.copyOf(weeds);
  }

  public WalkedPasses walkedPasses() {
    return new WalkedPasses(
        passes, years.stream().map(y -> new WalkedPasses.Year(y.passDays(), y.layers())).toList());
  }

  /** What it comes to over all years. */
  public SeasonSums sums() {
    Map<WeedId, Double> control = new LinkedHashMap<>();
    weeds.forEach(w -> control.put(w.pressure().weed().id(), w.controlPct()));
    return new SeasonSums(walkedPasses(), drivers(), control, cost, loss, net, windowConfidencePct);
  }

  private List<WeedOutcome> drivers() {
    List<WeedOutcome> out = weeds.stream().filter(w -> w.pressure().driver().isDriver()).toList();
    return out.isEmpty() ? weeds : out;
  }

  public WeedOutcome weed(WeedId id) {
    return weed(weeds, id);
  }

  public static WeedOutcome weed(List<WeedOutcome> weeds, WeedId id) {
    return weeds.stream()
        .filter(w -> w.pressure().weed().id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
