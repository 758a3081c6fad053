package org.swathbook.control;

import java.util.List;
import org.swathbook.growth.SoilCourse;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/** A year's soil as residual actives feel it, with what is asked for again and again. */
final class SoilYear {
  private static final double SLOWEST = 0.6;
  private static final double FASTEST = 1.4;
  private static final double HEAVY_RAIN_MM = 76.2;
  private static final int HEAVY_RAIN_DAYS = 3;

  private final SoilCourse soil;
  private final int[] thawedBy;
  private final int[] heavyRainFrom;

  SoilYear(SoilCourse soil) {
    this.soil = soil;
    this.thawedBy = new int[soil.days()];
    for (int d = 1; d < thawedBy.length; d++) {
      thawedBy[d] = thawedBy[d - 1] + (soil.age(d - 1, d) > 0 ? 1 : 0);
    }
    this.heavyRainFrom = new int[soil.days() + 1];
    heavyRainFrom[soil.days()] = soil.days();
    for (int d = soil.days() - 1; d >= 0; d--) {
      heavyRainFrom[d] =
          soil.rainAfter(d - HEAVY_RAIN_DAYS, d) >= HEAVY_RAIN_MM ? d : heavyRainFrom[d + 1];
    }
  }

  int days() {
    return soil.days();
  }

  /**
   * Age in stated-length days of what was sprayed on one day by the end of another: over the days
   * on which the soil is not frozen the mean ratio to calendar days stays within 0.6 to 1.4.
   */
  double age(int sprayed, int day) {
    int thawed = thawedBy[day] - thawedBy[sprayed];
    return Math.max(SLOWEST * thawed, Math.min(FASTEST * thawed, soil.age(sprayed, day)));
  }

  /** First day by which three inches have fallen in three days since the application. */
  int heavyRainAfter(int sprayed) {
    int whole = Math.min(soil.days(), sprayed + HEAVY_RAIN_DAYS);
    for (int d = sprayed + 1; d < whole; d++) {
      if (soil.rainAfter(sprayed, d) >= HEAVY_RAIN_MM) {
        return d;
      }
    }
    return heavyRainFrom[whole];
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.SOIL,
                SoilYear.class,
                "bounds of ageing",
                "over days without frost the mean ratio of τ to calendar days is kept within bounds",
                "default")
            .with("from", SLOWEST, "")
            .with("to", FASTEST, ""),
        ModelCard.of(
                ModelSection.SOIL,
                SoilYear.class,
                "heavy rain",
                "so much in so many days, once",
                "default, from memory")
            .with("rain", HEAVY_RAIN_MM, "mm")
            .with("in", HEAVY_RAIN_DAYS, "days")
            .given("3 in."));
  }
}
