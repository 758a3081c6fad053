package org.swathbook.weather;

import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

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

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEATHER,
                DegreeDays.class,
                "degree-days, average",
                "max(0, (Tx + Tn)/2 − Tb)",
                "McMaster & Wilhelm 1997, method 1")
            .given("base Tb of each clock, °C, from the catalog"),
        ModelCard.of(
                ModelSection.WEATHER,
                DegreeDays.class,
                "degree-days, clamped",
                "both extremes brought into [Tb, Tu], mean less Tb",
                "McMaster & Wilhelm 1997, method 2")
            .given("86/50 °F = 30/10 °C for corn and sorghum, from the catalog"),
        ModelCard.of(
                ModelSection.WEATHER,
                DegreeDays.class,
                "degree-days, single sine",
                "area of a sine through the extremes above Tb, less that above Tu",
                "Baskerville & Emin 1969")
            .given("Tb, Tu of each clock, °C, from the catalog"));
  }
}
