package org.swathbook.catalog;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;

/**
 * When the rows close: at a stage, or so many days after emergence by row spacing (cm), or never on
 * dry ground below a yield (bu/acre).
 */
public record Canopy(
    Optional<String> stage,
    SortedMap<Double, Integer> daysByRowCm,
    OptionalDouble neverBelowBuPerAcre,
    Source source) {}
