package org.swathbook.control;

import java.util.List;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.measure.Inches;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * What one dose in the soil does to the cohorts of one weed that resists nothing.
 *
 * <p>Plants that are up before it is activated are untouched, except that sites 2, 5, 13, 14 and 27
 * also take plants of at most an inch on the day the rain has come (default).
 */
public final class SoilEffect {
  private static final double REACH_BACK_CM = Inches.toCm(1);

  /** Does nothing to anything. */
  public static final SoilEffect NONE = new SoilEffect(new double[0], 0, 0, 0);

  private final double[] control;
  private final int from;
  private final int to;
  private final double atCropEmergence;

  private SoilEffect(double[] control, int from, int to, double atCropEmergence) {
    this.control = control;
    this.from = from;
    this.to = to;
    this.atCropEmergence = atCropEmergence;
  }

  static boolean reachesBack(int site) {
    return site == 2 || site == 5 || site == 13 || site == 14 || site == 27;
  }

  static SoilEffect of(
      ResidualCurve curve, double fresh, boolean reachesBack, SeasonTrace trace, CohortSet weed) {
    double[] control = new double[weed.count()];
    int from = weed.count();
    int to = 0;
    int rain = curve.activeFrom();
    for (int c = 0; c < control.length; c++) {
      int up = weed.emergedOn(c);
      // Counted plants were up already, and are there from the day of the count on.
      boolean counted = weed.isCounted(c);
      double e = counted ? 0 : fresh * curve.share(up);
      if (reachesBack
          && (counted ? up <= rain && weed.competesFrom(c) < rain : up < rain)
          && rain < Math.min(trace.days(), weed.endsOn(c))
          && weed.heightCm(c, rain) <= REACH_BACK_CM) {
        // The day itself when the active needs no rain: it is then there when it is put down.
        e = Math.max(e, fresh * curve.share(Math.max(rain, curve.appliedOn() + 1)));
      }
      control[c] = e;
      if (e > 0) {
        from = Math.min(from, c);
        to = c + 1;
      }
    }
    int up = trace.emergenceDay();
    return new SoilEffect(
        control, Math.min(from, to), to, up < trace.days() ? fresh * curve.share(up) : 0);
  }

  /** Whether it does nothing to any plant, not even to one that came up with the crop. */
  public boolean isIdle() {
    return from >= to && atCropEmergence == 0;
  }

  /** First cohort that it touches. */
  public int from() {
    return from;
  }

  /** The cohort after the last that it touches. */
  public int to() {
    return to;
  }

  /** Control, 0 to 1, of plants that would come up on the day the crop does. */
  public double atCropEmergence() {
    return atCropEmergence;
  }

  /** Control of a cohort, 0 to 1, before what the biotype resists. */
  public double control(int cohort) {
    return cohort < control.length ? control[cohort] : 0;
  }

  /** Raises the strongest control of each touched cohort to this one at a share of its effect. */
  public void raise(double[] strongest, double keeps) {
    for (int c = from; c < to; c++) {
      double e = keeps * control[c];
      if (e > strongest[c]) {
        strongest[c] = e;
      }
    }
  }

  /** Takes of what lives of each touched cohort what this leaves, at a share of its effect. */
  public void leave(double[] lives, double keeps) {
    for (int c = from; c < to; c++) {
      lives[c] *= 1 - keeps * control[c];
    }
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.SOIL,
                SoilEffect.class,
                "plants that are up",
                "untouched; sites 2, 5, 13, 14, 27 also take small plants when the rain has come",
                "default")
            .with("up to", REACH_BACK_CM, "cm"));
  }
}
