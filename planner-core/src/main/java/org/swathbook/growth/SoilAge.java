package org.swathbook.growth;

import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * How fast a soil active ages, in stated-length days per day: {@code fT · fW / fRef}.
 *
 * <p>{@code fT = exp(-(Ea/R)(1/T - 1/293.15))} on bare-soil temperature, Ea 45 kJ/mol (default,
 * between S-metolachlor's 29 of Long et al. 2014 and the regulatory 65.4), and 0 at or below 0 °C:
 * a frozen day ages nothing. {@code fW = min(1, (θ/θfc)^0.7)} (Walker 1974, Journal of
 * Environmental Quality 3: 396–401) on the evaporation layer. {@code fRef} is the mean of fT · fW
 * over the 42 days from 10 May over all of the station's years, since stated lengths are field
 * lengths: in such weeks a layer ages a day a day.
 *
 * <p>Ages here are never clipped. Whoever follows a layer keeps its mean ratio within bounds.
 */
public final class SoilAge {
  private static final double ACTIVATION_J_PER_MOL = 45_000;
  private static final double GAS_CONSTANT = 8.314;
  private static final double REFERENCE_K = 293.15;
  private static final double FREEZING_K = 273.15;
  private static final double WATER_EXPONENT = 0.7;
  static final int REFERENCE_DAYS = 42;

  private final Parameters parameters;

  /**
   * @param reference fRef, the mean of fT · fW in the weeks that stated lengths are for
   */
  record Parameters(double reference) {}

  SoilAge(Parameters parameters) {
    this.parameters = parameters;
  }

  /**
   * Stated-length days that a day adds. The soil is that of the day itself: its mean temperature
   * and the water at its end.
   *
   * @param warmth fT of the day
   * @param relativeWater θ over field capacity
   */
  double ageing(double warmth, double relativeWater) {
    return activity(warmth, relativeWater) / parameters.reference;
  }

  /** fT, 1 at 20 °C. */
  public static double temperatureFactor(double soilC) {
    if (soilC <= 0) {
      return 0;
    }
    return arrhenius(soilC, ACTIVATION_J_PER_MOL);
  }

  /** Rate of a reaction over its rate at 20 °C. */
  static double arrhenius(double celsius, double activationJPerMol) {
    double kelvin = celsius + FREEZING_K;
    return StrictMath.exp(-(activationJPerMol / GAS_CONSTANT) * (1 / kelvin - 1 / REFERENCE_K));
  }

  /** fW at θ over field capacity, at most 1. */
  public static double waterFactor(double relativeWater) {
    return relativeWater >= 1
        ? 1
        : Math.min(1, StrictMath.pow(Math.max(0, relativeWater), WATER_EXPONENT));
  }

  /** fT · fW. */
  static double activity(double warmth, double relativeWater) {
    // A frozen day ages nothing, wet or dry.
    return warmth == 0 ? 0 : warmth * waterFactor(relativeWater);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.SOIL_AGE,
                SoilAge.class,
                "temperature",
                "fT = exp(−(Ea/R)(1/T − 1/T0)) on the soil temperature of the day, 0 at or below 0 °C",
                "default, between 29 kJ/mol (Long et al. 2014) and 65.4 (regulatory)")
            .with("Ea", ACTIVATION_J_PER_MOL, "J/mol")
            .with("R", GAS_CONSTANT, "J mol⁻¹ K⁻¹")
            .with("T0", REFERENCE_K, "K")
            .with("0 °C =", FREEZING_K, "K"),
        ModelCard.of(
                ModelSection.SOIL_AGE,
                SoilAge.class,
                "water",
                "fW = min(1, (θ/θfc)^n) on the evaporation layer at the end of the day",
                "Walker 1974")
            .with("n", WATER_EXPONENT, ""),
        ModelCard.of(
                ModelSection.SOIL_AGE,
                SoilAge.class,
                "reference",
                "mean of fT · fW over the days from 10 May, all years of the station",
                "definition: stated lengths are field lengths")
            .with("days", REFERENCE_DAYS, "")
            .given("the field's first texture and latitude; 0.46–0.51 on the demo stations"));
  }
}
