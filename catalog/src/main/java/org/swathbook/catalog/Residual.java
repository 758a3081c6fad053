package org.swathbook.catalog;

import org.swathbook.measure.Rate;

/**
 * How long an active holds in the soil, as field lengths stated at two rates.
 *
 * @param lowDays days from application to the last day of good control at {@code low}
 * @param activatingRainMm rain or irrigation that moves it to the germinating seeds; 0 when none is
 *     needed because it is worked in
 */
public record Residual(Rate low, int lowDays, Rate high, int highDays, double activatingRainMm) {}
