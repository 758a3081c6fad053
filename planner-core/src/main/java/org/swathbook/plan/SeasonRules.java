package org.swathbook.plan;

import java.util.List;
import java.util.TreeSet;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.rules.HouseTests;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;

/** The house rules that only a whole program settles, by its score. */
final class SeasonRules {
  private final Kernel kernel;
  private final HouseRules house;
  private final List<Integer> drivers;

  SeasonRules(Candidates candidates, HouseRules house) {
    this.kernel = candidates.kernel();
    this.drivers = candidates.drivers();
    this.house = house;
  }

  boolean allow(List<PreparedPass> passes, Score score) {
    for (int w : drivers) {
      WeedPressure weed = kernel.traces().weeds().get(w);
      if (HouseTests.isShortOfControl(house, weed, score.controlPct(w))
          || HouseTests.isExposed(
              house,
              weed.weed().id(),
              100 * score.exposedMedian(w),
              100 * score.exposedWorstFifth(w))
          || HouseTests.isLostWithOneSite(house, score.controlPct(w))) {
        return false;
      }
    }
    return holdWithoutAnyOneSite(passes);
  }

  private boolean holdWithoutAnyOneSite(List<PreparedPass> passes) {
    TreeSet<Site> sites = new TreeSet<>();
    passes.forEach(p -> p.effect().actives().forEach(a -> sites.add(a.ingredient().site())));
    for (Site site : sites) {
      Score without = kernel.score(passes, site);
      for (int w : drivers) {
        if (HouseTests.isLostWithOneSite(house, without.controlPct(w))) {
          return false;
        }
      }
    }
    return true;
  }
}
