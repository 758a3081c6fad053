package org.swathbook.weather;

import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Water potential of a soil by its water: log-linear through field capacity and the wilting point,
 * {@code ψ = ψfc (θ/θfc)^-b} with {@code b = ln(ψwp/ψfc) / ln(θfc/θwp)} (the form of Saxton et al.
 * 1986, Soil Science Society of America Journal 50: 1031–1036, from memory). Below the wilting
 * point it is a continuation, good for telling damp from dry and no more.
 */
public final class WaterRetention {
  /** Water potential at field capacity, MPa (common practice, no source: a third of a bar). */
  public static final double FIELD_CAPACITY_MPA = -0.033;

  /** Water potential at the wilting point, MPa (common practice, no source: 15 bar). */
  public static final double WILTING_POINT_MPA = -1.5;

  private final double exponent;

  /**
   * @param fieldCapacity m³/m³
   * @param wiltingPoint m³/m³, below it and above zero
   */
  public WaterRetention(double fieldCapacity, double wiltingPoint) {
    if (!(wiltingPoint > 0 && fieldCapacity > wiltingPoint)) {
      throw new IllegalArgumentException("field capacity must be above the wilting point");
    }
    this.exponent =
        StrictMath.log(WILTING_POINT_MPA / FIELD_CAPACITY_MPA)
            / StrictMath.log(fieldCapacity / wiltingPoint);
  }

  /** b. */
  public double exponent() {
    return exponent;
  }

  /**
   * Water potential, MPa.
   *
   * @param relativeWater θ over field capacity, above 0
   */
  public double potentialMPa(double relativeWater) {
    return FIELD_CAPACITY_MPA * StrictMath.pow(relativeWater, -exponent);
  }

  /** θ over field capacity at a water potential below zero, MPa. */
  public double relativeWaterAt(double potentialMPa) {
    return StrictMath.pow(potentialMPa / FIELD_CAPACITY_MPA, -1 / exponent);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEATHER,
                WaterRetention.class,
                "water potential",
                "ψ = ψfc (θ/θfc)^−b, b = ln(ψwp/ψfc)/ln(θfc/θwp)",
                "form of Saxton et al. 1986, from memory; both potentials common practice, no source")
            .with("ψfc", FIELD_CAPACITY_MPA, "MPa")
            .with("ψwp", WILTING_POINT_MPA, "MPa")
            .given("only for weeds with a base water potential"));
  }
}
