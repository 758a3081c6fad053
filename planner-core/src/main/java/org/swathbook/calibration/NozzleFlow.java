package org.swathbook.calibration;

import org.swathbook.measure.Acre;

/**
 * One nozzle over the ground that it covers: GPM = GPA · MPH · W / 5940, with the width W in
 * inches. The equation of extension services (Albany County Weed and Pest, Wyoming; Oklahoma State
 * University).
 *
 * <p>The width is the spacing of the nozzles on a boom that sprays all ground, the width of the
 * band where bands are sprayed, and the spacing of the rows over their nozzles where several spray
 * one row.
 */
public final class NozzleFlow {
  /**
   * An acre, 43,560 sq ft, over a foot in inches and the 88 ft in a minute that are one mph: no
   * rounded factor but exact.
   */
  public static final double ACRE_INCHES_MPH = Acre.SQUARE_FEET * 12 / 88;

  /** Fluid ounces in a gallon. */
  public static final double OUNCES_PER_GALLON = 128;

  private NozzleFlow() {}

  /** Gallons per minute of one nozzle. */
  public static double gallonsPerMinute(double gallonsPerAcre, double mph, double widthIn) {
    return gallonsPerAcre * mph * widthIn / ACRE_INCHES_MPH;
  }

  /** Spray volume that this flow makes, gallons per acre. */
  public static double gallonsPerAcre(double gallonsPerMinute, double mph, double widthIn) {
    return gallonsPerMinute * ACRE_INCHES_MPH / (mph * widthIn);
  }

  /** Speed at which this flow makes the spray volume, miles per hour. */
  public static double mph(double gallonsPerMinute, double gallonsPerAcre, double widthIn) {
    return gallonsPerMinute * ACRE_INCHES_MPH / (gallonsPerAcre * widthIn);
  }

  /** Fluid ounces per minute. */
  public static double ouncesPerMinute(double gallonsPerMinute) {
    return gallonsPerMinute * OUNCES_PER_GALLON;
  }
}
