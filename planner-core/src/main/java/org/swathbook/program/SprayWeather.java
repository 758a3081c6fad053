package org.swathbook.program;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Weather at the field when a tank is to be sprayed, observed or forecast.
 *
 * @param windFromDegrees where the wind comes from, clockwise from north, 0 up to 360
 * @param temperatureF of the air now
 * @param highF highest of the day
 * @param coldestNightF lowest of the nights just past
 * @param inversion whether one is observed
 * @param hoursToRain until the next rain
 * @param dryHours hours from now on that a forecast calls dry, where it does not reach to the next
 *     rain
 * @param rainNext24hIn inches
 * @param rainNext10dIn inches of the next seven to ten days
 * @param meanPast3dF mean temperature of the three days before
 * @param meanNext3dF mean temperature of the day and the two after it
 * @param windForecast whether wind or gusts are a forecast and not measured at the field
 */
public record SprayWeather(
    OptionalDouble windMph,
    OptionalDouble gustMph,
    OptionalDouble windFromDegrees,
    OptionalDouble temperatureF,
    OptionalDouble highF,
    OptionalDouble coldestNightF,
    OptionalDouble humidityPct,
    Optional<Boolean> inversion,
    OptionalDouble hoursToRain,
    OptionalDouble dryHours,
    OptionalDouble rainNext24hIn,
    OptionalDouble rainNext48hIn,
    OptionalDouble rainNext10dIn,
    OptionalDouble meanPast3dF,
    OptionalDouble meanNext3dF,
    boolean windForecast) {

  public static final SprayWeather UNKNOWN =
      new SprayWeather(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          false);

  public SprayWeather {
    if (hoursToRain.isPresent() && dryHours.isPresent()) {
      throw new IllegalArgumentException("the next rain is known, or only how long it stays dry");
    }
    windFromDegrees.ifPresent(
        d -> {
          if (!(d >= 0 && d < 360)) {
            throw new IllegalArgumentException("a wind blows from 0 up to 360 degrees, not " + d);
          }
        });
  }
}
