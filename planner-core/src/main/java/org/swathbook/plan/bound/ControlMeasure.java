package org.swathbook.plan.bound;

import java.util.Arrays;
import java.util.Optional;
import org.swathbook.catalog.Site;

/** By how many points a blend falls short of full control of a weed at least. */
final class ControlMeasure implements Measure.Total {
  private ControlMeasure() {}

  /**
   * @param weed its place among the field's
   * @param without a site that does nothing to plants
   */
  static Measure of(AllDoses all, int weed, Optional<Site> without) {
    return new Measure(
        all, all.reach().withheld(weed, without), Day::ratedReach, without, new ControlMeasure());
  }

  @Override
  public double of(double[] byYear) {
    return Arrays.stream(byYear).sum();
  }

  @Override
  public double[] slopes(double[] byYear) {
    double[] out = new double[byYear.length];
    Arrays.fill(out, 1);
    return out;
  }
}
