package org.swathbook.audit;

import java.util.Optional;
import org.swathbook.catalog.Site;

/**
 * What is kept of a season of a weed on a field to rank it: less than what is told of it.
 *
 * @param leaningPct share of the emergence that met fewer than two effective sites
 * @param onePct share that met one
 * @param dominant site that did most of the killing
 * @param effective number of effective sites
 */
record SeasonFigures(double leaningPct, double onePct, Optional<Site> dominant, int effective) {

  static SeasonFigures of(SeasonSites s) {
    return new SeasonFigures(s.leaningPct(), onePct(s), s.dominant(), s.effective().size());
  }

  /** Of a season that is not walked all or none of it. */
  private static double onePct(SeasonSites s) {
    return s.met()
        .map(SeasonSites.Met::onePct)
        .orElseGet(() -> s.effective().size() == 1 ? 100.0 : 0.0);
  }
}
