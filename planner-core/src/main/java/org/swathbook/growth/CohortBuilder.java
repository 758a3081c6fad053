package org.swathbook.growth;

import java.util.Arrays;
import java.util.List;
import org.swathbook.catalog.Weed;
import org.swathbook.measure.Inches;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Gathers daily emergence into cohorts of four days and gives them their growth.
 *
 * <p>Bins are counted from the planting day, so that none holds plants from both sides of it. A
 * cohort counts as up on the middle day of its bin, weighted by number. Bins with less than a
 * hundred-thousandth of the season's plants are dropped and the others scaled up, so that the
 * cohorts still add up to the density.
 */
final class CohortBuilder {
  private static final int BIN_DAYS = 4;
  private static final double LEAST_SHARE = 1e-5;
  private static final double THIN = 0.01;

  /** Tillage kills what is shorter, cm (4 in; default). */
  private static final double KILLED_BELOW_CM = Inches.toCm(4);

  /** And half of what is no taller than this, cm (8 in; default). */
  private static final double HALVED_TO_CM = Inches.toCm(8);

  private CohortBuilder() {}

  /**
   * @param perM2 plants per m² by day
   * @param thermal °C-days of growth summed to the end of each day
   * @param tilled whether the soil is worked on the planting day
   */
  static CohortSet build(
      Weed weed, double[] perM2, double[] thermal, int plantingDay, boolean tilled) {
    int length = perM2.length;
    int offset = Math.floorMod(plantingDay, BIN_DAYS);
    int bins = (length + BIN_DAYS) / BIN_DAYS + 1;
    double[] sum = new double[bins];
    double[] moment = new double[bins];
    double total = 0;
    for (int d = 0; d < length; d++) {
      // As on most days of a year, which is to cost nothing.
      if (perM2[d] == 0) {
        continue;
      }
      int bin = Math.floorDiv(d - offset, BIN_DAYS) + 1;
      sum[bin] += perM2[d];
      moment[bin] += perM2[d] * d;
      total += perM2[d];
    }
    int[] emergedOn = new int[bins];
    double[] number = new double[bins];
    double kept = 0;
    int n = 0;
    gatherThin(sum, moment, total, Math.floorDiv(plantingDay - offset, BIN_DAYS) + 1);
    for (int b = 0; b < bins; b++) {
      if (sum[b] > LEAST_SHARE * total) {
        emergedOn[n] = (int) Math.round(moment[b] / sum[b]);
        number[n] = sum[b];
        kept += sum[b];
        n++;
      }
    }
    double[] survival = new double[n];
    HeightModel model = new HeightModel(weed.height());
    for (int c = 0; c < n; c++) {
      number[c] *= total / kept;
      survival[c] =
          tilled && emergedOn[c] < plantingDay
              ? tillageSurvival(model.heightCm(thermal[plantingDay] - thermal[emergedOn[c]]))
              : 1;
    }
    return new CohortSet(
        weed, Arrays.copyOf(emergedOn, n), Arrays.copyOf(number, n), survival, thermal);
  }

  /**
   * Joins bins that hold less than a hundredth of the season's plants with the next ones on their
   * side of planting, until they hold that much or span sixteen days: a few stragglers of March
   * need no cohort for every four days.
   */
  private static void gatherThin(double[] sum, double[] moment, double total, int plantingBin) {
    int since = 0;
    for (int b = 0; b + 1 < sum.length; b++) {
      boolean thin = sum[b] > 0 && sum[b] < THIN * total;
      if (thin && since < 3 && b + 1 != plantingBin) {
        sum[b + 1] += sum[b];
        moment[b + 1] += moment[b];
        sum[b] = 0;
        moment[b] = 0;
        since++;
      } else {
        since = 0;
      }
    }
  }

  /** Share of plants of a height that live through tillage. */
  static double tillageSurvival(double heightCm) {
    if (heightCm < KILLED_BELOW_CM) {
      return 0;
    }
    return heightCm <= HALVED_TO_CM ? 0.5 : 1;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEEDS,
                CohortBuilder.class,
                "tillage at planting",
                "kills plants under the one height, half of those up to the other",
                "default")
            .with("under", KILLED_BELOW_CM, "cm")
            .with("up to", HALVED_TO_CM, "cm"),
        ModelCard.of(
                ModelSection.WEEDS,
                CohortBuilder.class,
                "cohorts",
                "days gathered from planting on; up on the weighted middle day; bins of less than a hundredth join the next",
                "definition")
            .with("days a bin", BIN_DAYS, "")
            .with("joined below", THIN, "of the plants")
            .with("dropped below", LEAST_SHARE, "of the plants")
            .given("plants/m²"));
  }
}
