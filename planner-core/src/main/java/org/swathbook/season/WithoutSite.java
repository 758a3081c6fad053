package org.swathbook.season;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Acre;

/**
 * The control of each weed by some passes when a site does nothing to any plant. A weed to which no
 * active of the site does anything is not walked again. Belongs to one thread.
 */
public final class WithoutSite {
  private final Kernel kernel;
  private final List<PreparedPass> passes;
  private final Site site;
  private final Score whole;
  private final CellWalk walk;

  private WithoutSite(Kernel kernel, List<PreparedPass> passes, Site site, Score whole) {
    this.kernel = kernel;
    this.passes = passes;
    this.site = site;
    this.whole = whole;
    this.walk = kernel.walk(passes, Optional.of(site));
  }

  /**
   * @param whole what the passes do with the site
   */
  public static WithoutSite of(Kernel kernel, List<PreparedPass> passes, Site site, Score whole) {
    return new WithoutSite(kernel, passes, site, whole);
  }

  /**
   * Means over the years.
   *
   * @param controlPct control as an eye rates it, percent
   * @param survivorsPerAcre alive at harvest of those up by needed-until
   */
  record Left(double controlPct, double survivorsPerAcre) {}

  /** Control of a weed as an eye rates it, mean of the years, percent. */
  public double controlPct(int weed) {
    return left(weed).controlPct();
  }

  Left left(int weed) {
    return matters(weed)
        ? walked(weed)
        : new Left(whole.controlPct(weed), whole.survivorsPerAcre(weed));
  }

  private Left walked(int weed) {
    double[] control = new double[whole.years()];
    double[] survivors = new double[whole.years()];
    for (int y = 0; y < control.length; y++) {
      control[y] = kernel.controlPct(walk, y, weed);
      survivors[y] = walk.survivors();
    }
    return new Left(Score.mean(control), Score.mean(survivors) * Acre.SQUARE_METERS);
  }

  private boolean matters(int weed) {
    for (PreparedPass pass : passes) {
      if (pass.effect().has(site) && matters(pass, weed)) {
        return true;
      }
    }
    return false;
  }

  private boolean matters(PreparedPass pass, int weed) {
    for (int y = 0; y < whole.years(); y++) {
      if (pass.foliar(y, weed, Optional.of(site)) != pass.foliar(y, weed, Optional.empty())) {
        return true;
      }
      for (int j = 0; j < pass.soilDoses(); j++) {
        if (pass.soilSite(j) == site.number() && !pass.soil(y, j, weed).isIdle()) {
          return true;
        }
      }
    }
    return false;
  }
}
