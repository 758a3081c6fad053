package org.swathbook.growth;

import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.catalog.Weed;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Heat that a weed's plants have had to grow in, on the species' own base; half of it counts under
 * a closed canopy (default). A plant's age is what was added since it came up.
 */
final class WeedGrowth {
  /** Share of the heat that counts under a closed canopy. */
  static final double UNDER_CANOPY = 0.5;

  private final Parameters parameters;

  /**
   * @param heat of the days on the weed's own base
   * @param open the same added up to the end of each day
   */
  record Parameters(SeasonHeat.ByDay heat, SeasonHeat.ByDay open, double shareUnderCanopy) {
    static Parameters of(Weed weed, SeasonHeat heat) {
      ThermalClock clock =
          new ThermalClock(DegreeDayMethod.AVERAGE, weed.height().baseC(), OptionalDouble.empty());
      return new Parameters(heat.of(clock), heat.sumOf(clock), UNDER_CANOPY);
    }
  }

  WeedGrowth(Parameters parameters) {
    this.parameters = parameters;
  }

  /**
   * °C-days that plants had by the end of a day, from those that they had the evening before. Asked
   * of every day of every weed of a field: plain numbers, for records of states and rates would be
   * most of what a walk leaves behind.
   */
  double after(double yesterday, int day, boolean canopyClosed) {
    double heat = parameters.heat.on(day);
    return yesterday + (canopyClosed ? heat * parameters.shareUnderCanopy : heat);
  }

  /** °C-days to the end of each day on open ground. */
  SeasonHeat.ByDay open() {
    return parameters.open;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEEDS,
                WeedGrowth.class,
                "heat for growth",
                "average degree-days on the base of the height curve; under a closed canopy a share of them",
                "default")
            .with("share", UNDER_CANOPY, ""));
  }
}
