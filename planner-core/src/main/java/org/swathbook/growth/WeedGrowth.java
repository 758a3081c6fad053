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
   */
  record Parameters(SeasonHeat.ByDay heat, double shareUnderCanopy) {
    static Parameters of(Weed weed, SeasonHeat heat) {
      return new Parameters(
          heat.of(
              new ThermalClock(
                  DegreeDayMethod.AVERAGE, weed.height().baseC(), OptionalDouble.empty())),
          UNDER_CANOPY);
    }
  }

  /**
   * @param heat °C-days since the first day of the year
   */
  record State(double heat) {}

  /**
   * @param heat °C-days per day
   */
  record Rates(double heat) {}

  WeedGrowth(Parameters parameters) {
    this.parameters = parameters;
  }

  /** Before the first day. */
  State before() {
    return new State(0);
  }

  Rates rates(OutdoorDay today) {
    double heat = parameters.heat.on(today.day());
    return new Rates(today.canopyClosed() ? heat * parameters.shareUnderCanopy : heat);
  }

  State integrate(State yesterday, Rates rates) {
    return new State(yesterday.heat + rates.heat);
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
