package org.swathbook.weather;

import java.time.LocalTime;

/** Sunrise and sunset of a day at a place, in the civil time of the place. */
public record SunTimes(LocalTime sunrise, LocalTime sunset) {}
