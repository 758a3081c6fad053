package org.swathbook.plan.exact;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.WeedId;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.HouseDeficit;
import org.swathbook.rules.HouseTests;
import org.swathbook.season.ExposureBounds;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;

/**
 * The house rules of a whole season that every program is sure to break that begins with some
 * passes and goes on with one candidate, and by how far at least: control, with all sites and with
 * any one gone, is no better than {@link ControlAhead} says, and no less of the emergence is
 * exposed than {@link ExposureBounds} say.
 */
final class SeasonAhead {
  private final Kernel kernel;
  private final HouseRules house;
  private final Set<String> mayBreak;
  private final List<Integer> drivers;
  private final ExposureBounds exposure;

  /**
   * @param mayBreak names of the rules that a program may break
   */
  SeasonAhead(Candidates candidates, HouseRules house, Set<String> mayBreak) {
    this.kernel = candidates.kernel();
    this.drivers = candidates.drivers();
    this.house = house;
    this.exposure = candidates.exposure();
    this.mayBreak = mayBreak;
  }

  /**
   * What such a program breaks at least; null when that is a rule that may not be broken.
   *
   * @param broken what its first passes break whatever comes after them
   * @param place of the candidate among those that may come next
   * @param passes all passes with the candidate
   * @param further whether any may come after it
   */
  @Nullable Breach atLeast(
      Breach broken, ControlAhead control, int place, List<PreparedPass> passes, boolean further) {
    Breach out = broken;
    for (int d = 0; d < drivers.size() && out != null; d++) {
      out = exposed(out, drivers.get(d), passes, further);
    }
    for (int d = 0; d < drivers.size() && out != null; d++) {
      WeedPressure weed = kernel.traces().weeds().get(drivers.get(d));
      double most = control.mostPct(0, d, place);
      if (HouseTests.isShortOfControl(house, weed, most)) {
        out = with(out, HouseRuleCheck.SEASON_CONTROL, 100 * house.seasonControl() - most);
      }
      double without = most;
      for (int view = 1; view < control.views() && out != null; view++) {
        without = Math.min(without, control.mostPct(view, d, place));
        if (!mayBreak.contains(HouseRuleCheck.ONE_SITE_GONE)
            && HouseTests.isLostWithOneSite(house, without)) {
          return null;
        }
      }
      if (out != null && HouseTests.isLostWithOneSite(house, without)) {
        out = with(out, HouseRuleCheck.ONE_SITE_GONE, 100 * house.oneSiteGone() - without);
      }
    }
    return out;
  }

  private @Nullable Breach exposed(
      Breach broken, int driver, List<PreparedPass> passes, boolean further) {
    WeedId weed = kernel.traces().weeds().get(driver).weed().id();
    ExposureBounds.Exposed least = exposure.least(passes, driver, further);
    double median = 100 * least.median();
    double worst = 100 * least.worstFifth();
    if (!HouseTests.isExposed(house, weed, median, worst)) {
      return broken;
    }
    HouseTests.Exposure e = HouseTests.exposure(house, weed, median, worst);
    // Where only the worst years are sure, the median one may decide by how far: who knows.
    double missed = e.inMedianYear() ? e.actualPct() - e.limitPct() : 0;
    return with(broken, HouseRuleCheck.MAX_EXPOSED_EMERGENCE, missed);
  }

  private @Nullable Breach with(Breach broken, String rule, double missed) {
    return mayBreak.contains(rule) ? broken.with(rule, HouseDeficit.of(rule, missed)) : null;
  }
}
