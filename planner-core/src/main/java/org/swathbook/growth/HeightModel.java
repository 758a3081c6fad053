package org.swathbook.growth;

import java.util.List;
import org.swathbook.catalog.HeightCurve;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Expolinear height (Goudriaan and Monteith 1990, Annals of Botany 66: 695–701; form from memory):
 * {@code h(x) = (c/r) ln(1 + exp(r (x - x0)))}, x in °C-days since the plant came up, less the
 * value at 0 so that it starts at the ground.
 *
 * <p>The parameters are given on base 10 °C and rescaled to the weed's own base so that growth at
 * 20 °C is the same: {@code f = (20 - base)/10}, c/f, r/f, x0·f. Without it, plants of April stay
 * absurdly small on a base of 4 °C.
 */
public final class HeightModel {
  private final double slope;
  private final double rate;
  private final double lag;
  private final double ground;
  private final double maxCm;

  public HeightModel(HeightCurve curve) {
    double f = (20 - curve.baseC()) / 10;
    this.slope = curve.slopeCm() / f;
    this.rate = curve.relativeRate() / f;
    this.lag = curve.lag() * f;
    this.maxCm = curve.maxCm();
    this.ground = raw(0);
  }

  private double raw(double x) {
    return slope / rate * StrictMath.log1p(StrictMath.exp(rate * (x - lag)));
  }

  /** Height in cm at a thermal age in °C-days; rising, 0 at age 0. */
  public double heightCm(double age) {
    return age <= 0 ? 0 : Math.min(maxCm, raw(age) - ground);
  }

  /** Thermal age at which this height is reached; the inverse below the greatest height. */
  public double ageAt(double heightCm) {
    if (heightCm <= 0) {
      return 0;
    }
    double y = (heightCm + ground) * rate / slope;
    // Above 40 the logarithm is the identity to the last bit and expm1 would soon overflow.
    double inner = y > 40 ? y : StrictMath.log(StrictMath.expm1(y));
    return Math.max(0, lag + inner / rate);
  }

  public double maxCm() {
    return maxCm;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEEDS,
                HeightModel.class,
                "height",
                "h(x) = (c/r) ln(1 + exp(r (x − x0))) less its value at 0, x °C-days since emergence",
                "Goudriaan & Monteith 1990, form from memory; c Horak & Loughin 2000; r, x0 default")
            .given("c 0.20 cm Palmer amaranth, 0.135 waterhemp; r 0.03, x0 90, from the catalog"),
        ModelCard.of(
                ModelSection.WEEDS,
                HeightModel.class,
                "early species",
                "parameters on base 10 °C become c/f, r/f, x0·f, f = (20 − Tb)/10: growth at 20 °C stays the same",
                "default")
            .given("Tb 4 °C for kochia and giant ragweed, from the catalog"));
  }
}
