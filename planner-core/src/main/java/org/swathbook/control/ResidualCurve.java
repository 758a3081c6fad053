package org.swathbook.control;

import java.util.Arrays;
import java.util.List;
import org.swathbook.catalog.Residual;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

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
  private static final double LEFT_ON_COARSE = 0.6;
  private static final double LEFT_ELSEWHERE = 0.85;

  private final SoilYear soil;
  private final int appliedOn;
  private final double lengthDays;
  private final double[] ramp;
  private final int activeFrom;
  private final int washedFrom;
  private final double leftByWash;

  private ResidualCurve(
      SoilYear soil,
      int appliedOn,
      double lengthDays,
      double[] ramp,
      int activeFrom,
      int washedFrom,
      double leftByWash) {
    this.soil = soil;
    this.appliedOn = appliedOn;
    this.lengthDays = lengthDays;
    this.ramp = ramp;
    this.activeFrom = activeFrom;
    this.washedFrom = washedFrom;
    this.leftByWash = leftByWash;
  }

  /**
   * @param soil that of the trace
   * @param kgPerHa rate against the stated rates, as sprayed
   * @param leaches whether heavy rain washes it out of a coarse soil, and the soil is coarse
   */
  static ResidualCurve of(
      SeasonTrace trace,
      SoilYear soil,
      Residual residual,
      double kgPerHa,
      boolean leaches,
      int day) {
    double length = FadeCurve.lengthDays(residual, kgPerHa * (1 - trace.cover(day)));
    double need = residual.activatingRainMm();
    int days = trace.days();
    // Rain mostly comes soon.
    double[] ramp = new double[ACTIVATION_WINDOW_DAYS];
    double reached = need > 0 ? 0 : 1;
    int d = day;
    while (reached < 1 && d + 1 < days) {
      d++;
      double rain = trace.rainAfter(Math.max(day, d - ACTIVATION_WINDOW_DAYS), d);
      reached = Math.max(reached, Math.min(1, rain / need));
      if (d - day == ramp.length) {
        ramp = Arrays.copyOf(ramp, 2 * ramp.length);
      }
      ramp[d - day] = reached;
    }
    int activeFrom = reached < 1 ? days : d;
    return new ResidualCurve(
        soil,
        day,
        length,
        Arrays.copyOf(ramp, activeFrom - day),
        activeFrom,
        soil.heavyRainAfter(day),
        leaches ? LEFT_ON_COARSE : LEFT_ELSEWHERE);
  }

  public int appliedOn() {
    return appliedOn;
  }

  /** Day on which the activating amount is reached; the length of the trace when it never is. */
  public int activeFrom() {
    return activeFrom;
  }

  /**
   * Share of the fresh control felt by a plant that comes up on this day; 0 up to the application
   * and past the end of the trace.
   */
  public double share(int day) {
    if (day <= appliedOn || day >= soil.days()) {
      return 0;
    }
    double active = day >= activeFrom ? 1 : ramp[day - appliedOn];
    double left = day >= washedFrom ? leftByWash : 1;
    return active * left * FadeCurve.relative(soil.age(appliedOn, day), lengthDays);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.SOIL,
                ResidualCurve.class,
                "activation",
                "min(1, rain of the last days / need) since the application; what is reached is held",
                "Purdue University's half inch in 7–10 days; ramp default")
            .with("the last", ACTIVATION_WINDOW_DAYS, "days")
            .given("need per active, from the catalog"),
        ModelCard.of(
                ModelSection.SOIL,
                ResidualCurve.class,
                "left by heavy rain",
                "a share on a coarse soil, another elsewhere; site 3 counts as elsewhere",
                "default, from memory")
            .with("coarse", LEFT_ON_COARSE, "")
            .with("elsewhere", LEFT_ELSEWHERE, ""),
        ModelCard.of(
                ModelSection.SOIL,
                ResidualCurve.class,
                "over a crop",
                "the soil gets 1 − cover of the dose",
                "default")
            .given("share"));
  }
}
