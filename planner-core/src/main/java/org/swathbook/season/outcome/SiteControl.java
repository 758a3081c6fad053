package org.swathbook.season.outcome;

import java.util.List;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;

/**
 * What one site does to a weed in one pass, by itself: mean over the years.
 *
 * @param best the ingredient of the site that does most
 * @param controlPct foliar: share of the plants standing, at the house size percentile, before the
 *     share that no partner reaches; soil: mean over its first 21 active days
 * @param struck a listed or suspected resistance strikes it from the counts
 * @param watched nothing but the watch list strikes it: suspected, not listed
 * @param slowed foliar: the cold slows it on most of the days on which the pass is sprayed
 * @param effective counts as effective: neither struck nor slowed, and at or above the house
 *     threshold
 */
public record SiteControl(
    Site site,
    IngredientId best,
    double controlPct,
    boolean struck,
    boolean watched,
    boolean slowed,
    boolean effective) {

  /** Of which no suspicion stands on the watch list, and which no cold slows. */
  public SiteControl(
      Site site, IngredientId best, double controlPct, boolean struck, boolean effective) {
    this(site, best, controlPct, struck, false, false, effective);
  }

  /** How many of them are effective. */
  public static int effective(List<SiteControl> sites) {
    return (int) sites.stream().filter(SiteControl::effective).count();
  }

  /** A half: from 50 % up to the threshold, or slowed by the cold; shown but not counted. */
  public boolean half() {
    return !struck && !effective && controlPct >= 50;
  }
}
