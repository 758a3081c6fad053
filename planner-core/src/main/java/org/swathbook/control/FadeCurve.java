package org.swathbook.control;

import java.util.List;
import org.swathbook.catalog.Residual;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * The one shape in which soil control fades: fresh at 100 %, 80 % of fresh on the last day of the
 * stated length L, fading on: {@code E/fresh = 1 / (1 + 1/4 (age/L)^2.5)}. It lies beside the 79 :
 * 70 : 54 that Jha et al. (2015) measured at 21, 35 and 63 days for single site 15 actives. The
 * half-life does not set the shape: residue and control go together poorly (Mueller and Steckel
 * 2011).
 */
public final class FadeCurve {
  /** A table's figure for soil control is what was seen at 4 to 6 weeks: the mean to here. */
  static final int RATED_DAYS = 35;

  /** No active controls more than this, however it was rated (default). */
  static final double MOST = 0.995;

  private FadeCurve() {}

  /** Share of the fresh control left at an age in stated-length days; 0 for a length of 0. */
  public static double relative(double ageDays, double lengthDays) {
    if (!(lengthDays > 0)) {
      return 0;
    }
    double x = ageDays / lengthDays;
    return x <= 0 ? 1 : 1 / (1 + 0.25 * x * x * Math.sqrt(x));
  }

  /**
   * Fresh control, 0 to 1, lifted so that the mean over the first 35 days at the length of the high
   * rate is what the table gives.
   */
  public static double fresh(double emaxPct, Residual residual) {
    double sum = 0;
    for (int d = 0; d < RATED_DAYS; d++) {
      sum += relative(d + 0.5, residual.highDays());
    }
    return sum > 0 ? Math.min(MOST, emaxPct / 100 / (sum / RATED_DAYS)) : 0;
  }

  /**
   * Stated length in days of a rate (kg/ha): by the logarithm of the rate inside the stated rates,
   * in proportion below the lowest, no gain above the highest.
   */
  public static double lengthDays(Residual residual, double kgPerHa) {
    double low = residual.low().kgPerHa();
    double high = residual.high().kgPerHa();
    if (kgPerHa >= high) {
      return residual.highDays();
    }
    if (kgPerHa <= low) {
      return residual.lowDays() * kgPerHa / low;
    }
    return residual.lowDays()
        + (residual.highDays() - residual.lowDays())
            * (StrictMath.log(kgPerHa / low) / StrictMath.log(high / low));
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.SOIL,
                FadeCurve.class,
                "fade",
                "E/fresh = 1 / (1 + ¼ (τ/L)^2.5): 80 % of fresh on the last day of the stated length L",
                "form default; beside 79 : 70 : 54 at 21, 35, 63 days for single site 15 actives, Jha et al. 2015")
            .given("τ in stated-length days from the application"),
        ModelCard.of(
                ModelSection.SOIL,
                FadeCurve.class,
                "fresh",
                "lifted so that the mean over the rated days at the length of the high rate is the table's figure",
                "default: tables show what was seen at 4–6 weeks")
            .with("rated", RATED_DAYS, "days")
            .with("at most", MOST, ""),
        ModelCard.of(
                ModelSection.SOIL,
                FadeCurve.class,
                "length by rate",
                "by log rate between the two stated rates, L · rate/lowest below, no gain above",
                "default")
            .given(
                "kg/ha; where a label grades both ends of its range by soil, the top for this soil counts as the top of all (`LabelRates`)"));
  }
}
