package org.swathbook.catalog;

import java.time.MonthDay;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * When a weed comes up: degree-days (°C-days of the clock, from the start day) at which 10, 50 and
 * 90 % of the season's plants are up.
 *
 * <p>With a base water potential these are hydrothermal degree-days: heat counts only on days on
 * which the topsoil is wetter than that.
 */
public record Emergence(
    ThermalClock clock,
    MonthDay start,
    double at10,
    double at50,
    double at90,
    Optional<Tail> tail,
    OptionalDouble waterBaseMPa,
    Source source) {

  /** Water potential of a drained topsoil, at field capacity, MPa (common practice: -1/3 bar). */
  public static final double DRAINED_MPA = -0.033;

  /** A last share that straggles in evenly from the 90 % point until a heat sum (°C-days). */
  public record Tail(double share, double until) {}

  public Emergence {
    if (waterBaseMPa.isPresent() && !(waterBaseMPa.getAsDouble() < DRAINED_MPA)) {
      throw new IllegalArgumentException("a base water potential lies below that of drained soil");
    }
    if (!(at10 > 0 && at10 < at50 && at50 < at90)) {
      throw new IllegalArgumentException("the 10, 50 and 90 % points must rise from above zero");
    }
  }
}
