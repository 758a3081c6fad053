package org.swathbook.catalog;

/**
 * Expolinear height growth on °C-days, as parameters on base 10 °C; the engine rescales them to the
 * weed's own base.
 *
 * @param baseC base temperature of the weed's growth
 * @param slopeCm height gained per °C-day in the straight part
 * @param relativeRate r of the exponential part, per °C-day
 * @param lag x0, °C-days at which the straight part would start
 */
public record HeightCurve(
    double baseC, double slopeCm, double relativeRate, double lag, double maxCm, Source source) {}
