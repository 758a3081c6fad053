package org.swathbook.catalog;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.measure.Rate;

/**
 * Days to wait from application to planting for rates up to a limit.
 *
 * @param upTo highest rate of the band; empty for any rate
 * @param rainMm rain and irrigation that must fall before the days start to count
 */
public record PlantingBand(Optional<Rate> upTo, int days, OptionalDouble rainMm) {}
