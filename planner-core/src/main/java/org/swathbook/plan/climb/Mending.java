package org.swathbook.plan.climb;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.plan.choice.Strengths;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Walked;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * Neighbours that may mend what the house rules object to: another effective site in the pass that
 * lacks one, a residual or an earlier date where layers leave a hole. Their own cost hides their
 * use from the quick score, so they are looked at apart.
 */
public final class Mending {
  private final PlanSpace space;
  private final Strengths strengths;
  private final HouseRules house;
  private final TankOffers offers;
  private final Moves moves;

  public Mending(
      PlanSpace space, Strengths strengths, HouseRules house, TankOffers offers, Moves moves) {
    this.space = space;
    this.strengths = strengths;
    this.house = house;
    this.offers = offers;
    this.moves = moves;
  }

  List<Draft> of(Walked now) {
    List<Draft> out = new ArrayList<>();
    if (now.meetsHouseRules()) {
      return out;
    }
    Map<Integer, Map<WeedId, Integer>> asked = new HashMap<>();
    for (PassOutcome pass : now.toCome()) {
      asked.put(pass.index(), offers.foliarSitesAsked(now.outcome().walkedPasses(), pass));
    }
    for (int w = 0; w < strengths.drivers().size(); w++) {
      WeedOutcome weed = now.outcome().weed(strengths.drivers().get(w).weed().id());
      boolean needsSite =
          HouseTests.isLostWithOneSite(house, weed) || HouseTests.isShortOfControl(house, weed);
      boolean needsLayer =
          HouseTests.isExposed(house, weed) || !HouseTests.shortOverlaps(house, weed).isEmpty();
      for (PassOutcome pass : now.toCome()) {
        mendPass(out, now, pass, asked, w, needsSite, needsLayer);
      }
    }
    return out;
  }

  private void mendPass(
      List<Draft> out,
      Walked now,
      PassOutcome pass,
      Map<Integer, Map<WeedId, Integer>> asked,
      int driver,
      boolean needsSite,
      boolean needsLayer) {
    PassWeed p =
        pass.weeds().stream()
            .filter(x -> x.weed().equals(strengths.drivers().get(driver).weed().id()))
            .findFirst()
            .orElseThrow();
    boolean foliar =
        needsSite
            || asked.getOrDefault(pass.index(), Map.of()).getOrDefault(p.weed(), 0)
                > p.effectiveFoliarSites();
    boolean soil =
        needsSite
            || needsLayer
            || offers.soilSitesAsked(
                    now.outcome().walkedPasses(), pass.index(), strengths.drivers().get(driver))
                > p.effectiveSoilSites();
    if (!foliar && !soil) {
      return;
    }
    int place = pass.index() - now.made();
    int date = now.draft().stops().get(place).date();
    List<Integer> choices = new ArrayList<>();
    for (int option : space.legalOn(date)) {
      Site site = space.option(option).dose().actives().get(0).ingredient().site();
      boolean newFoliar = foliar && strengths.foliar(option, driver) && !has(p.foliar(), site);
      boolean newSoil = soil && strengths.soil(option, driver) && !has(p.soil(), site);
      if (newFoliar || newSoil) {
        choices.add(option);
      }
    }
    out.addAll(moves.adding(now.draft(), place, choices));
  }

  private static boolean has(List<SiteControl> sites, Site site) {
    return sites.stream().anyMatch(s -> s.site().equals(site) && s.effective());
  }
}
