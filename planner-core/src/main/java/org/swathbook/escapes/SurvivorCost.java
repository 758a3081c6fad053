package org.swathbook.escapes;

import java.util.Map;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Money;

/**
 * What the survivors cost when nothing more is done.
 *
 * @param lossPerAcre yield
 * @param seedsPerM2 shed by weed, an order of magnitude
 */
public record SurvivorCost(Money lossPerAcre, Map<WeedId, Double> seedsPerM2) {
  public SurvivorCost {
    seedsPerM2 = Ordered.map(seedsPerM2);
  }
}
