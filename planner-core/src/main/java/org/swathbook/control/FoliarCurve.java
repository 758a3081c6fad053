package org.swathbook.control;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.swathbook.measure.Inches;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Control through leaves by dose and size, one surface for both:
 *
 * <pre>
 * z = (rate / high) (max(h, hm/2) / hm)^-gamma
 * E = top / (1 + (top/Emax - 1) z^-2)
 * </pre>
 *
 * with the high rate of the label's range, the height hm at which the table's Emax was rated, and
 * top halfway from Emax to 100 %. At hm and the high rate E is the table's figure. A low rate is
 * nearly enough on small plants and ruinous on tall ones, as in the field; with two separate
 * factors half rates would look free. Form and constants: default, ours.
 *
 * @param emax control at hm and the high rate, 0 to 1
 * @param controlHeightCm hm
 * @param gamma how fast size tells
 */
public record FoliarCurve(double emax, double controlHeightCm, double gamma) {
  /** Contact sites fail on size sooner than systemic ones (default). */
  public static final double CONTACT_GAMMA = 2.6;

  public static final double SYSTEMIC_GAMMA = 1.6;

  /** Heights at which a figure counts as rated when its table does not say (default). */
  public static final double CONTACT_HEIGHT_CM = Inches.toCm(4);

  public static final double SYSTEMIC_HEIGHT_CM = Inches.toCm(6);

  /** A rating of 100 % would hold at any dose and size; the shape needs a little room (default). */
  static final double MOST = 0.995;

  public FoliarCurve {
    if (!(emax >= 0 && emax <= 1) || !(controlHeightCm > 0)) {
      throw new IllegalArgumentException(
          "control from 0 to 1 at a height above 0, not " + emax + " at " + controlHeightCm);
    }
  }

  // Written out, as in every key that is hashed at a start: see RuleId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FoliarCurve o
        && Double.compare(emax, o.emax) == 0
        && Double.compare(controlHeightCm, o.controlHeightCm) == 0
        && Double.compare(gamma, o.gamma) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(emax) + Double.hashCode(controlHeightCm))
        + Double.hashCode(gamma);
  }

  /** Control, 0 to 1, of plants of a height; a dose above the high rate does no more than it. */
  public double control(double doseShareOfHigh, double heightCm) {
    double e = Math.min(MOST, emax);
    if (!(e > 0) || !(doseShareOfHigh > 0)) {
      return 0;
    }
    double size = Math.max(heightCm, controlHeightCm / 2) / controlHeightCm;
    double dose = Math.min(1, doseShareOfHigh);
    double top = (e + 1) / 2;
    // z^-2, written out so that it falls with dose and rises with size to the last bit
    double burden = StrictMath.pow(size, 2 * gamma) / (dose * dose);
    return top / (1 + (top / e - 1) * burden);
  }

  /** Control by height class; never rising. */
  public double[] table(double doseShareOfHigh) {
    double[] out = new double[HeightClasses.COUNT];
    double last = 1;
    for (int k = 0; k < out.length; k++) {
      last = Math.min(last, control(doseShareOfHigh, HeightClasses.heightCm(k)));
      out[k] = last;
    }
    return out;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.LEAVES,
                FoliarCurve.class,
                "dose and size",
                "z = (rate/high) (max(h, hm/2)/hm)^−γ, E = top / (1 + (top/Emax − 1) z^−2), top halfway from Emax to 100 %",
                "default")
            .with("γ, sites 6, 10, 14, 22,", CONTACT_GAMMA, "")
            .with("γ, others,", SYSTEMIC_GAMMA, "")
            .with("Emax at most", MOST, "")
            .given(
                "high is the top of the label's range for crop and phase, uncut where only the top goes down on some soils (`LabelRates`)"),
        ModelCard.of(
                ModelSection.LEAVES,
                FoliarCurve.class,
                "hm",
                "the height at which the table was rated",
                "catalog; default where it is unstated")
            .with("unstated: contact", CONTACT_HEIGHT_CM, "cm")
            .with("systemic", SYSTEMIC_HEIGHT_CM, "cm"));
  }
}
