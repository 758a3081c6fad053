package org.swathbook.program;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/**
 * The day of a spraying with what is known of it: what is empty is asked for or modelled.
 *
 * @param time civil time at the field
 * @param scouted crop and weeds as somebody saw them
 */
public record SprayDay(
    LocalDate date, Optional<LocalTime> time, Scouted scouted, SprayWeather weather) {

  /** A day of which nothing more is known. */
  public static SprayDay of(LocalDate date) {
    return new SprayDay(date, Optional.empty(), Scouted.NOTHING, SprayWeather.UNKNOWN);
  }

  /** The same in other weather. */
  public SprayDay with(SprayWeather other) {
    return new SprayDay(date, time, scouted, other);
  }

  /** What was seen and met, at another time. */
  SprayDay at(LocalDate day, LocalTime clock) {
    return new SprayDay(day, Optional.of(clock), scouted, weather);
  }
}
