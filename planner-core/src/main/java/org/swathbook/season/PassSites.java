package org.swathbook.season;

import java.util.List;
import org.swathbook.season.outcome.SiteControl;

/** How a weed stands at the passes of a walk, and what their sites do to it. */
final class PassSites {
  private final Kernel kernel;
  private final ProgramCensus census;
  private final SiteCounts counts;
  private final int years;

  PassSites(Kernel kernel, ProgramCensus census) {
    this.kernel = kernel;
    this.census = census;
    this.counts = new SiteCounts(kernel);
    this.years = kernel.traces().years().size();
  }

  double[] perM2(int index, int weed) {
    double[] out = new double[years];
    for (int y = 0; y < years; y++) {
      out[y] = census.standing(index, y, weed).perM2();
    }
    return out;
  }

  /** By year. */
  boolean[] standing(double[] perM2) {
    boolean[] out = new boolean[years];
    for (int y = 0; y < years; y++) {
      out[y] = PassOutcomes.stands(perM2[y]);
    }
    return out;
  }

  /** Whether it counts as standing in the median year. */
  boolean stands(int index, int weed) {
    return PassOutcomes.stands(Stats.median(perM2(index, weed)));
  }

  SitesMet.OfPass of(PreparedPass pass, int index, int weed) {
    return new SitesMet.OfPass(
        stands(index, weed), foliar(pass, index, weed), pass.soilSites(kernel, weed));
  }

  /** What each site of the pass does through the leaves of the plants that it is judged by. */
  List<SiteControl> foliar(PreparedPass pass, int index, int weed) {
    return counts.foliar(pass, weed, standing(perM2(index, weed)), heightClasses(index, weed));
  }

  private int[] heightClasses(int index, int weed) {
    int[] out = new int[years];
    for (int y = 0; y < out.length; y++) {
      out[y] = census.standing(index, y, weed).percentileClass(kernel.house().sizePercentile());
    }
    return out;
  }
}
