package org.swathbook.rules;

import java.util.Optional;
import org.swathbook.program.SprayJob;
import org.swathbook.weather.SunTimes;

/**
 * A pass on the day on which it is sprayed, with what is observed or forecast of that day.
 *
 * @param sun sunrise and sunset at the field; empty when the field's place is not known
 */
public record DayFacts(PassFacts pass, SprayJob job, Optional<SunTimes> sun) {}
