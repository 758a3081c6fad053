package org.swathbook.weather;

import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Brings wind measured at another height down to 2 m over short grass: {@code u2 = uz · 4.87 /
 * ln(67.8 z − 5.42)}. Source: FAO-56 (Allen et al. 1998), equation 47.
 */
public final class WindHeight {
  private WindHeight() {}

  /**
   * @param windMs wind at the height, m/s
   * @param heightM height of the measurement above the ground, m
   */
  public static double atTwoMetres(double windMs, double heightM) {
    return windMs * 4.87 / StrictMath.log(67.8 * heightM - 5.42);
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
            ModelSection.WEATHER,
            WindHeight.class,
            "wind at 2 m",
            "u2 = uz · 4.87 / ln(67.8 z − 5.42), z the height of the measurement, m",
            "FAO-56 (Allen et al. 1998), equation 47"));
  }
}
