package org.swathbook.season.outcome;

import java.util.List;
import org.swathbook.catalog.WeedId;

/**
 * A weed at a pass, over the years.
 *
 * @param stands whether it counts as standing in the median year: from 0.1 plants/m²
 * @param medianPerM2 plants standing when the sprayer comes
 * @param p50Cm median over the years of the height that half of the standing plants do not exceed;
 *     NaN when none stand
 * @param p90Cm the same at the house size percentile
 * @param p90LowCm lowest and {@code p90HighCm} highest year
 * @param foliar effective and other foliar sites, by site
 * @param soil the same for soil activity
 */
public record PassWeed(
    WeedId weed,
    boolean stands,
    double medianPerM2,
    double p50Cm,
    double p90Cm,
    double p90LowCm,
    double p90HighCm,
    List<SiteControl> foliar,
    List<SiteControl> soil) {

  public PassWeed {
    foliar = List.copyOf(foliar);
    soil = List.copyOf(soil);
  }

  /** Where it stands in none it has no height either. */
  public boolean standsInAnyYear() {
    return !Double.isNaN(p90Cm);
  }

  public int effectiveFoliarSites() {
    return SiteControl.effective(foliar);
  }

  public int effectiveSoilSites() {
    return SiteControl.effective(soil);
  }
}
