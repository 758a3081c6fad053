package org.swathbook.rules.stewardship;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.swathbook.book.Application;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Site;
import org.swathbook.program.ActiveDose;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.Rated;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.PassOutcome;
import org.swathbook.season.PassWeed;
import org.swathbook.season.SiteControl;

/** One site that is alone the answer to a driver weed, again. */
public final class SiteRepeatedRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("site-repeated"),
          Severity.WARN,
          "Is one site alone the answer two seasons running?",
          "The only effective site of this pass on a driver weed, through leaves or through the soil,"
              + " was also the only one of last season's journal, or of an earlier pass of this"
              + " season: a warning. A note where last season had it beside others. Effective is what"
              + " the table rates at the house level and the weed does not resist.",
          List.of(
              "Norsworthy et al. 2012, Weed Science special issue, best management practices",
              "Evans et al. 2016, Pest Management Science 72"),
          "site 27 by itself on Palmer amaranth after emergence in both seasons",
          "site 14 in both seasons, each time beside site 15");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    for (PassWeed w : facts.pass().weeds()) {
      WeedPressure pressure = facts.outcome(w.weed()).pressure();
      if (pressure.driver().isDriver()) {
        if (w.stands()) {
          judge(facts, pressure, true, effective(w.foliar()), out);
        }
        judge(facts, pressure, false, effective(w.soil()), out);
      }
    }
  }

  private void judge(
      PassFacts facts, WeedPressure weed, boolean foliar, SortedSet<Site> now, Findings out) {
    if (now.size() != 1) {
      return;
    }
    Site site = now.first();
    SortedSet<Site> before = lastSeason(facts, weed, foliar);
    boolean earlier = earlierThisSeason(facts, weed, foliar, site);
    if (earlier || before.contains(site)) {
      boolean alone = earlier || before.size() == 1;
      out.add(
          this,
          alone ? Severity.WARN : Severity.NOTE,
          facts.about().withWeed(weed.weed().id()),
          () ->
              Text.of(
                      "Site "
                          + site
                          + " is the only effective site "
                          + (foliar ? "through leaves" : "through the soil")
                          + " on "
                          + weed.weed().name()
                          + " in this pass"
                          + (earlier
                              ? ", as in an earlier one of this season."
                              : alone
                                  ? ", as it was last season."
                                  : "; last season had it beside others."),
                      "house rule effectiveSite; journal")
                  .compared("site " + site + " again", "another site, or one beside it")
                  .cleared("another effective site this year, or a partner of one"));
    }
  }

  private static boolean earlierThisSeason(
      PassFacts facts, WeedPressure weed, boolean foliar, Site site) {
    for (PassOutcome p : facts.season().passes()) {
      if (p.index() < facts.pass().index()) {
        for (PassWeed w : p.weeds()) {
          if (w.weed().equals(weed.weed().id()) && (w.stands() || !foliar)) {
            SortedSet<Site> sites = effective(foliar ? w.foliar() : w.soil());
            if (sites.size() == 1 && sites.first().equals(site)) {
              return true;
            }
          }
        }
      }
    }
    return false;
  }

  private static SortedSet<Site> lastSeason(PassFacts facts, WeedPressure weed, boolean foliar) {
    SortedSet<Site> out = new TreeSet<>();
    double least =
        100
            * (foliar
                ? facts.book().house().effectiveSite()
                : facts.book().house().effectiveSoilSite());
    for (Application row : facts.book().journal().of(facts.field().id())) {
      if (row.season() == facts.book().season() - 1) {
        for (ActiveDose a : row.dose().actives()) {
          Ingredient i = a.ingredient();
          double pct =
              (foliar ? Rated.foliarPct(facts, weed, i) : Rated.soilPct(facts, weed, i)).orElse(0);
          if (pct >= least && !Rated.isResisted(weed, i)) {
            out.add(i.site());
          }
        }
      }
    }
    return out;
  }

  private static SortedSet<Site> effective(List<SiteControl> sites) {
    SortedSet<Site> out = new TreeSet<>();
    sites.stream().filter(SiteControl::effective).forEach(s -> out.add(s.site()));
    return out;
  }
}
