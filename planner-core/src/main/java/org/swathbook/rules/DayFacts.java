package org.swathbook.rules;

import java.util.Optional;
import java.util.OptionalDouble;

/** A pass on the day it is sprayed, with what was observed or is forecast; empty is unknown. */
public record DayFacts(
    PassFacts pass,
    OptionalDouble windMph,
    Optional<String> windFrom,
    OptionalDouble temperatureF,
    OptionalDouble humidityPct,
    Optional<Boolean> inversion,
    OptionalDouble hoursToRain) {}
