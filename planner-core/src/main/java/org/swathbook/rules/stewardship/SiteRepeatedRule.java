package org.swathbook.rules.stewardship;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SiteControl;

/** One site that is alone the answer to a driver weed, again. */
public final class SiteRepeatedRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("site-repeated"),
          Severity.WARN,
          "Is one site alone the answer two seasons running?",
          "The only effective site of this pass on a driver weed, through leaves or through the soil,"
              + " was also the only one of an earlier pass of this season, or of the last season"
              + " that the journal has: a warning, with all the seasons running. A note where that"
              + " season had it beside others, or where other passes of this season bring others."
              + " A season of which seasons.csv names the weeds without this one is passed over;"
              + " one of which the journal has nothing ends the count. Effective is what the table"
              + " rates at the house level and the weed does not resist; before emergence an active"
              + " that works in the soil too counts there alone.",
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
      WeedPressure pressure = facts.pressure(w.weed());
      if (pressure.driver().isDriver()) {
        judge(facts, pressure, true, effective(w, true), out);
        judge(facts, pressure, false, effective(w, false), out);
      }
    }
  }

  private void judge(
      PassFacts facts, WeedPressure weed, boolean foliar, SortedSet<Site> now, Findings out) {
    if (now.size() != 1) {
      return;
    }
    Site site = now.first();
    boolean earlier = earlierThisSeason(facts, weed, foliar, site);
    List<PastSites.Season> past = new PastSites(facts.book(), weed, foliar).seasons();
    boolean usedLast = !past.isEmpty() && past.get(0).sites().contains(site);
    if (!earlier && !usedLast) {
      return;
    }
    List<Integer> alone = aloneIn(past, site);
    SortedSet<Site> others = othersThisSeason(facts, weed, foliar, site);
    boolean isStreak = !alone.isEmpty() && others.isEmpty();
    out.add(
        this,
        earlier || isStreak ? Severity.WARN : Severity.NOTE,
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
                        + (earlier ? ", as in an earlier one of this season" : "")
                        + (usedLast ? before(past.get(0), site, alone, others) : "")
                        + ".",
                    foliar
                        ? "house rule effectiveSite; journal"
                        : "house rule effectiveSoilSite; journal")
                .compared("site " + site + " again", "another site, or one beside it")
                .cleared("another effective site this year, or a partner of one"));
  }

  /** Seasons running in which the site was alone, the earliest first. */
  private static List<Integer> aloneIn(List<PastSites.Season> past, Site site) {
    List<Integer> out = new ArrayList<>();
    for (PastSites.Season s : past) {
      if (!s.isAlone(site)) {
        break;
      }
      out.add(s.year());
    }
    Collections.reverse(out);
    return out;
  }

  private static String before(
      PastSites.Season last, Site site, List<Integer> alone, SortedSet<Site> others) {
    if (alone.isEmpty()) {
      SortedSet<Site> beside = new TreeSet<>(last.sites());
      beside.remove(site);
      return "; in " + last.year() + " it stood beside " + sites(beside);
    }
    String years = ", as it was in " + Say.list(alone.stream().map(Object::toString).toList());
    return others.isEmpty()
        ? years + ": " + (alone.size() + 1) + " seasons running"
        : years + "; other passes of this season bring " + sites(others);
  }

  private static String sites(SortedSet<Site> sites) {
    return (sites.size() == 1 ? "site " : "sites ")
        + Say.list(sites.stream().map(Site::toString).toList());
  }

  private static boolean earlierThisSeason(
      PassFacts facts, WeedPressure weed, boolean foliar, Site site) {
    return facts.season().passes().stream()
        .filter(p -> p.index() < facts.pass().index())
        .map(p -> effective(p, weed, foliar))
        .anyMatch(s -> s.size() == 1 && s.first().equals(site));
  }

  private static SortedSet<Site> othersThisSeason(
      PassFacts facts, WeedPressure weed, boolean foliar, Site site) {
    SortedSet<Site> out = new TreeSet<>();
    facts.season().passes().forEach(p -> out.addAll(effective(p, weed, foliar)));
    out.remove(site);
    return out;
  }

  private static SortedSet<Site> effective(PassOutcome pass, WeedPressure weed, boolean foliar) {
    SortedSet<Site> out = new TreeSet<>();
    pass.weeds().stream()
        .filter(w -> w.weed().equals(weed.weed().id()))
        .forEach(w -> out.addAll(effective(w, foliar)));
    return out;
  }

  private static SortedSet<Site> effective(PassWeed w, boolean foliar) {
    SortedSet<Site> out = new TreeSet<>();
    if (w.stands() || !foliar) {
      (foliar ? w.foliar() : w.soil())
          .stream().filter(SiteControl::effective).forEach(s -> out.add(s.site()));
    }
    return out;
  }
}
