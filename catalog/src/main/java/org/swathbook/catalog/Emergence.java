package org.swathbook.catalog;

import java.time.MonthDay;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

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

  // Written out, as in every key that is hashed at a start: see IngredientId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Emergence o
        && clock.equals(o.clock)
        && start.equals(o.start)
        && Double.compare(at10, o.at10) == 0
        && Double.compare(at50, o.at50) == 0
        && Double.compare(at90, o.at90) == 0
        && tail.equals(o.tail)
        && waterBaseMPa.equals(o.waterBaseMPa)
        && source.equals(o.source);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * clock.hashCode() + start.hashCode()) + Double.hashCode(at50);
  }
}
