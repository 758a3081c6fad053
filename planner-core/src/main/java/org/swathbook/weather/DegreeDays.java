package org.swathbook.weather;

/**
 * Degree-days of one day from its extremes, in the units of the temperatures, never negative. The
 * method is part of a parameter's identity: 70 and 40 °F on base 50 °F give 5, 10 or 7.5 by method.
 *
 * <p>Sources: average and clamped, the two readings of the standard formula in McMaster and Wilhelm
 * 1997, Agricultural and Forest Meteorology 87: 291–300; sine, Baskerville and Emin 1969, Ecology
 * 50: 514–517.
 */
public final class DegreeDays {
  private DegreeDays() {}

  /** Mean of the extremes less the base, at least 0. */
  public static double average(double tmax, double tmin, double base) {
    return Math.max(0, (tmax + tmin) / 2 - base);
  }

  /** Both extremes are brought into [base, ceiling] before the mean is taken. */
  public static double clamped(double tmax, double tmin, double base, double ceiling) {
    double high = Math.min(ceiling, Math.max(base, tmax));
    double low = Math.min(ceiling, Math.max(base, tmin));
    return (high + low) / 2 - base;
  }

  /** Area between a sine through the extremes and the base. */
  public static double singleSine(double tmax, double tmin, double base) {
    if (tmax <= base) {
      return 0;
    }
    double mean = (tmax + tmin) / 2;
    if (tmin >= base) {
      return mean - base;
    }
    double amplitude = (tmax - tmin) / 2;
    // Day angle at which the rising curve crosses the base.
    double angle = StrictMath.asin((base - mean) / amplitude);
    double area = (mean - base) * (Math.PI / 2 - angle) + amplitude * StrictMath.cos(angle);
    return Math.max(0, area / Math.PI);
  }

  /** The same with a horizontal cut-off: heat above the ceiling counts as the ceiling. */
  public static double singleSine(double tmax, double tmin, double base, double ceiling) {
    return Math.max(0, singleSine(tmax, tmin, base) - singleSine(tmax, tmin, ceiling));
  }
}
