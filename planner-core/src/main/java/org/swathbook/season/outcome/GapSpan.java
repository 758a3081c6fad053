package org.swathbook.season.outcome;

import org.swathbook.catalog.WeedId;

/**
 * Days between planting and needed-until without a layer that holds, with the share of the season's
 * emergence in them.
 */
public record GapSpan(WeedId weed, int fromDay, int toDay, double emergenceShare) {}
