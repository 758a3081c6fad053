package org.swathbook.catalog;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.measure.Rate;

/**
 * Days to wait from application to planting for rates up to a limit. First match wins.
 *
 * @param when soil on which the row applies
 * @param upTo highest rate of the band; empty for any rate
 * @param days 0 when nothing is to be waited for
 * @param rainMm rain and irrigation that must fall before the days start to count
 */
public record PlantingBand(
    SoilCondition when, Optional<Rate> upTo, int days, OptionalDouble rainMm) {}
