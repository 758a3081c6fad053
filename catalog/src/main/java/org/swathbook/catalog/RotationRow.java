package org.swathbook.catalog;

import java.time.MonthDay;
import java.util.Optional;
import org.swathbook.measure.Period;
import org.swathbook.measure.Rate;

/**
 * A row of a next-crop interval: applies on such soil, when sprayed after a day of the year, above
 * a rate. First match wins. {@link Period#NONE} for a known absence of any interval.
 */
public record RotationRow(
    SoilCondition when,
    Optional<MonthDay> sprayedAfter,
    Optional<Rate> rateAbove,
    Period interval) {}
