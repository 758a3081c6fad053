package org.swathbook.audit;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * A season of a weed on a field with its place among all fields.
 *
 * @param streakYears seasons running up to this one in which the same site did most of the killing
 * @param turnover sites gained and lost since the season before over the distinct ones of both, 0
 *     to 1; empty in the first. To be shown, never praised: in Evans et al. 2016 (Pest Management
 *     Science 72) it went with more resistance
 * @param rank of the field and weed, from 1, the one that leans most first; all its seasons share
 *     it. Empty in a long book for a weed of a told field that comes behind all that are ranked
 * @param reason why, in words
 */
public record RankedSites(
    SeasonSites sites,
    int streakYears,
    Optional<Double> turnover,
    OptionalInt rank,
    String reason) {}
