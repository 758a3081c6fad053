package org.swathbook.calibration;

/** Speed from a course that somebody timed. One mile per hour is 88 ft in a minute, exactly. */
public final class GroundSpeed {
  private static final double FEET_PER_MINUTE = 88;

  private GroundSpeed() {}

  /** Miles per hour. */
  public static double mph(double feet, double seconds) {
    return feet * 60 / (seconds * FEET_PER_MINUTE);
  }

  /** Seconds that a course takes. */
  public static double seconds(double feet, double mph) {
    return feet * 60 / (mph * FEET_PER_MINUTE);
  }
}
