package org.swathbook.catalog;

import java.util.OptionalDouble;

/** A method of counting degree-days with its base and, where it has one, its ceiling, in °C. */
public record ThermalClock(DegreeDayMethod method, double baseC, OptionalDouble ceilingC) {}
