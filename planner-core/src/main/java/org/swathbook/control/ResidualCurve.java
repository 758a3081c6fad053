package org.swathbook.control;

import org.swathbook.catalog.Residual;
import org.swathbook.growth.SeasonTrace;

/**
 * What one dose in the soil does, day by day, as a share of the fresh control of the weed: fade
 * with age, ramp of activation, loss by heavy rain. Days are those of the trace.
 *
 * <ul>
 *   <li>Age counts in stated-length days from the application; over the days on which the soil is
 *       not frozen the mean ratio to calendar days is kept within 0.6 to 1.4 (default).
 *   <li>Activation: rain and irrigation of the last ten days over what the active needs, at most 1;
 *       what is reached is held.
 *   <li>Three inches of rain in three days leave 0.6 of it on a coarse soil and 0.85 elsewhere,
 *       once (default). Site 3 binds to the soil and counts as elsewhere on any soil (from memory).
 *   <li>Over a crop the soil gets the share of the dose that the leaves let through.
 * </ul>
 */
public final class ResidualCurve {
  private static final int ACTIVATION_WINDOW_DAYS = 10;
  private static final double SLOWEST = 0.6;
  private static final double FASTEST = 1.4;
  private static final double HEAVY_RAIN_MM = 76.2;
  private static final int HEAVY_RAIN_DAYS = 3;
  private static final double LEFT_ON_COARSE = 0.6;
  private static final double LEFT_ELSEWHERE = 0.85;

  /** Less than this of the fresh control is nothing. */
  private static final double NOTHING = 0.001;

  private final int appliedOn;
  private final int activeFrom;
  private final double[] share;

  private ResidualCurve(int appliedOn, int activeFrom, double[] share) {
    this.appliedOn = appliedOn;
    this.activeFrom = activeFrom;
    this.share = share;
  }

  /**
   * @param kgPerHa rate against the stated rates, as sprayed
   * @param leaches whether heavy rain washes it out of a coarse soil, and the soil is coarse
   */
  public static ResidualCurve of(
      SeasonTrace trace, Residual residual, double kgPerHa, boolean leaches, int day) {
    double onSoil = kgPerHa * (1 - trace.cover(day));
    double length = FadeCurve.lengthDays(residual, onSoil);
    double[] share = new double[trace.days() - day];
    double ramp = residual.activatingRainMm() > 0 ? 0 : 1;
    int activeFrom = ramp >= 1 ? day : trace.days();
    double washed = 1;
    int thawed = 0;
    int end = 0;
    for (int d = day + 1; d < trace.days(); d++) {
      if (trace.soilAge(d - 1, d) > 0) {
        thawed++;
      }
      if (ramp < 1) {
        double rain = trace.rainAfter(Math.max(day, d - ACTIVATION_WINDOW_DAYS), d);
        ramp = Math.max(ramp, Math.min(1, rain / residual.activatingRainMm()));
        if (ramp >= 1) {
          activeFrom = d;
        }
      }
      if (washed == 1 && trace.rainAfter(Math.max(day, d - HEAVY_RAIN_DAYS), d) >= HEAVY_RAIN_MM) {
        washed = leaches ? LEFT_ON_COARSE : LEFT_ELSEWHERE;
      }
      double age = Math.max(SLOWEST * thawed, Math.min(FASTEST * thawed, trace.soilAge(day, d)));
      double s = washed * ramp * FadeCurve.relative(age, length);
      if (s >= NOTHING) {
        share[d - day] = s;
        end = d - day + 1;
      }
    }
    return new ResidualCurve(day, activeFrom, java.util.Arrays.copyOf(share, end));
  }

  public int appliedOn() {
    return appliedOn;
  }

  /** Day on which the activating amount is reached; the length of the trace when it never is. */
  public int activeFrom() {
    return activeFrom;
  }

  /** First day on which, and on all later ones, it does nothing. */
  public int end() {
    return appliedOn + share.length;
  }

  /** Share of the fresh control felt by a plant that comes up on this day. */
  public double share(int day) {
    int i = day - appliedOn;
    return i > 0 && i < share.length ? share[i] : 0;
  }
}
