package org.swathbook.check;

import java.util.Optional;
import java.util.OptionalInt;
import org.swathbook.catalog.WeedId;

/**
 * A house rule that a program breaks.
 *
 * @param name as the book writes it, {@code minFoliarSites}
 * @param weed the driver weed; empty for a rule of the whole program
 * @param pass place in the program, from 0; empty for a rule of the whole season
 * @param limit sites, days, or percent
 * @param actual in the same unit
 */
public record BrokenHouseRule(
    String name, Optional<WeedId> weed, OptionalInt pass, double limit, double actual) {}
