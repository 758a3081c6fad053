package org.swathbook.plan.draft;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.rules.HouseTests;
import org.swathbook.season.Score;

/**
 * What a season misses of the house rules for sure, told from its score alone: the control of
 * driver weeds and how much of them comes up with no layer that holds. Sites, overlaps and windows
 * need a walk; with a site gone control is at most what it is with it.
 */
public final class ScoredMisses {
  private ScoredMisses() {}

  /** Weed by weed in their order; empty when the score objects to nothing. */
  public static List<Missed> of(HouseRules house, List<WeedPressure> weeds, Score score) {
    List<Missed> out = new ArrayList<>();
    for (int w = 0; w < weeds.size(); w++) {
      if (weeds.get(w).driver().isDriver()) {
        ofDriver(house, weeds.get(w), score, w, out);
      }
    }
    return out;
  }

  private static void ofDriver(
      HouseRules house, WeedPressure weed, Score score, int w, List<Missed> out) {
    double control = score.controlPct(w);
    if (HouseTests.isShortOfControl(house, weed, control)) {
      out.add(missed(HouseRuleCheck.SEASON_CONTROL, 100 * house.seasonControl() - control));
    }
    double median = 100 * score.exposedMedian(w);
    double worst = 100 * score.exposedWorstFifth(w);
    if (HouseTests.isExposed(house, weed.weed().id(), median, worst)) {
      HouseTests.Exposure e = HouseTests.exposure(house, weed.weed().id(), median, worst);
      out.add(missed(HouseRuleCheck.MAX_EXPOSED_EMERGENCE, e.actualPct() - e.limitPct()));
    }
    if (HouseTests.isLostWithOneSite(house, control)) {
      out.add(missed(HouseRuleCheck.ONE_SITE_GONE, 100 * house.oneSiteGone() - control));
    }
  }

  private static Missed missed(String rule, double by) {
    return new Missed(rule, HouseDeficit.of(rule, by));
  }
}
