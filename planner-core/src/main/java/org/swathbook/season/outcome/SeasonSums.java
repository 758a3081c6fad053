package org.swathbook.season.outcome;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Money;

/**
 * What a walked program comes to over all weather years, without the course of each year: what a
 * search compares programs by. The same numbers as in {@link SeasonOutcome}.
 *
 * @param walkedPasses the passes with their layers in each year
 * @param weeds the driver weeds, all where none is one, in the order of the field's list
 * @param controlPct mean control of every weed, in the order of the field's list
 * @param cost products and passes on one acre, mean over the years; empty when a product has no
 *     price
 * @param loss expected yield loss on one acre
 * @param net yield goal times price less loss and cost
 * @param windowConfidencePct share of years in which every pass met its windows
 */
public record SeasonSums(
    WalkedPasses walkedPasses,
    List<WeedOutcome> weeds,
    Map<WeedId, Double> controlPct,
    Optional<Money> cost,
    Money loss,
    Optional<Money> net,
    double windowConfidencePct) {

  public SeasonSums {
    weeds = List.copyOf(weeds);
    controlPct = Collections.unmodifiableMap(new LinkedHashMap<>(controlPct));
  }

  public List<PassOutcome> passes() {
    return walkedPasses.passes();
  }

  /** Number of weather years. */
  public int years() {
    return walkedPasses.years().size();
  }

  public WeedOutcome weed(WeedId id) {
    return SeasonOutcome.weed(weeds, id);
  }
}
