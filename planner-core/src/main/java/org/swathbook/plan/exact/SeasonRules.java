package org.swathbook.plan.exact;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.Site;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.draft.Missed;
import org.swathbook.plan.draft.ScoredMisses;
import org.swathbook.rules.HouseTests;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;
import org.swathbook.season.WithoutSite;

/** The house rules that only a whole program settles, by its score. */
final class SeasonRules {
  private final Kernel kernel;
  private final HouseRules house;
  private final Set<String> mayBreak;
  private final List<Integer> drivers;

  /**
   * @param mayBreak names of the rules that a program may break
   */
  SeasonRules(Candidates candidates, HouseRules house, Set<String> mayBreak) {
    this.kernel = candidates.kernel();
    this.drivers = candidates.drivers();
    this.house = house;
    this.mayBreak = mayBreak;
  }

  /**
   * What a whole program breaks, its control without each site aside, and never by more than it
   * does; null when that is a rule that may not be broken.
   *
   * @param broken what its passes break whatever comes after them
   */
  @Nullable Breach of(Breach broken, Score score) {
    Breach out = broken;
    for (Missed m : ScoredMisses.of(house, kernel.traces().weeds(), score)) {
      if (!mayBreak.contains(m.rule())) {
        return null;
      }
      out = out.with(m.rule(), m.deficit());
    }
    return out;
  }

  /**
   * Whether the control of driver weeds holds without any one site, where the house asks for it.
   *
   * @param score of the passes
   */
  boolean holdsWithoutAnyOneSite(List<PreparedPass> passes, Score score) {
    if (mayBreak.contains(HouseRuleCheck.ONE_SITE_GONE)) {
      return true;
    }
    TreeSet<Site> sites = new TreeSet<>();
    passes.forEach(p -> p.effect().actives().forEach(a -> sites.add(a.ingredient().site())));
    for (Site site : sites) {
      WithoutSite without = WithoutSite.of(kernel, passes, site, score);
      for (int w : drivers) {
        if (HouseTests.isLostWithOneSite(house, without.controlPct(w))) {
          return false;
        }
      }
    }
    return true;
  }
}
