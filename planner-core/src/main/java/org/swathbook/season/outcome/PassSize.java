package org.swathbook.season.outcome;

import org.swathbook.catalog.WeedId;

/**
 * The plants of one weed that stand when the sprayer comes, in one weather year.
 *
 * @param pass place of the pass in the program, from 0
 * @param perM2 plants standing
 * @param p50Cm height that half of them do not exceed
 * @param p90Cm the same at the house size percentile
 */
public record PassSize(int pass, WeedId weed, double perM2, double p50Cm, double p90Cm) {}
