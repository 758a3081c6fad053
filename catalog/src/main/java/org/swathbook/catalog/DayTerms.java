package org.swathbook.catalog;

import java.util.OptionalDouble;

/**
 * What a label says of the day and hour of spraying.
 *
 * @param windMph allowed wind
 * @param inversionRefused true when the label forbids spraying into an inversion
 * @param runoffRainHours no spraying when rain that runs off is forecast within so many hours
 * @param downwindBuffer untreated distance kept downwind
 */
public record DayTerms(
    Stated<Limit> windMph,
    Stated<TemperatureLimit> temperature,
    Stated<Boolean> inversionRefused,
    Stated<SprayHours> hours,
    Stated<Double> runoffRainHours,
    Stated<Buffer> downwindBuffer) {

  /**
   * Untreated distance kept downwind.
   *
   * @param downwindFt from whatever drift harms
   * @param fieldCropsFt from field crops, where the label keeps less from them
   */
  public record Buffer(double downwindFt, OptionalDouble fieldCropsFt) {

    /** The distance from what lies there. */
    public double feet(boolean fieldCrop) {
      return fieldCrop ? fieldCropsFt.orElse(downwindFt) : downwindFt;
    }
  }

  /**
   * Allowed air temperature of the day, observed or forecast.
   *
   * @param advice wording that advises, not forbids
   */
  public record TemperatureLimit(Limit celsius, boolean advice) {}

  /**
   * Allowed time of day by the sun.
   *
   * @param afterSunrise hours from sunrise to the first allowed minute
   * @param beforeSunset hours from the last allowed minute to sunset
   * @param advice wording that advises, not forbids
   */
  public record SprayHours(double afterSunrise, double beforeSunset, boolean advice) {}
}
