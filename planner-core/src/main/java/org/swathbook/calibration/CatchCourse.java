package org.swathbook.calibration;

import org.swathbook.measure.Acre;

/**
 * Spray caught from one nozzle while the sprayer passes, or would pass, a measured course. Over a
 * 128th of an acre ounces caught are gallons per acre, since a gallon has 128 fluid ounces (LSU
 * AgCenter; Clemson University).
 */
public final class CatchCourse {
  private CatchCourse() {}

  /** Feet on which a nozzle of this width covers a 128th of an acre. */
  public static double feet(double widthIn) {
    return feet(1 / NozzleFlow.OUNCES_PER_GALLON, widthIn);
  }

  /** Feet on which this width covers so many acres. */
  public static double feet(double acres, double widthIn) {
    return acres * Acre.SQUARE_FEET * 12 / widthIn;
  }

  /** Spray volume, gallons per acre, from what one nozzle gave over a course of any length. */
  public static double gallonsPerAcre(double ounces, double courseFeet, double widthIn) {
    double acres = courseFeet * widthIn / 12 / Acre.SQUARE_FEET;
    return ounces / NozzleFlow.OUNCES_PER_GALLON / acres;
  }

  /** Fluid ounces that one nozzle has to give over a course for a spray volume. */
  public static double ounces(double gallonsPerAcre, double courseFeet, double widthIn) {
    double acres = courseFeet * widthIn / 12 / Acre.SQUARE_FEET;
    return gallonsPerAcre * acres * NozzleFlow.OUNCES_PER_GALLON;
  }
}
