package org.swathbook.weather;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * What a station's record says of one day; empty is not known.
 *
 * @param rainMm rain alone; a trace is 0
 * @param irrigationMm water given besides, 0 where none is named
 * @param windMs mean of the day, m/s
 */
public record ObservedDay(
    LocalDate date,
    OptionalDouble tmaxC,
    OptionalDouble tminC,
    OptionalDouble rainMm,
    double irrigationMm,
    OptionalDouble windMs) {}
