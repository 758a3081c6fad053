package org.swathbook.catalog;

import java.time.MonthDay;
import java.util.Optional;

/**
 * When a weed comes up: degree-days (°C-days of the clock, from the start day) at which 10, 50 and
 * 90 % of the season's plants are up.
 */
public record Emergence(
    ThermalClock clock,
    MonthDay start,
    double at10,
    double at50,
    double at90,
    Optional<Tail> tail,
    Source source) {

  /** A last share that straggles in evenly from the 90 % point until a heat sum (°C-days). */
  public record Tail(double share, double until) {}

  public Emergence {
    if (!(at10 > 0 && at10 < at50 && at50 < at90)) {
      throw new IllegalArgumentException("the 10, 50 and 90 % points must rise from above zero");
    }
  }
}
