package org.swathbook.rules.mixture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.Offers;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SiteControl;

/** Too few sites that each carry a driver weed alone: what survives one is not met by another. */
public final class SingleSiteRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("single-site"),
          Severity.WARN,
          "Do enough different sites each work on the driver weed in this pass?",
          "Where the driver weed stands: fewer effective foliar sites than the house asks. A note"
              + " where the labels let no more that work into one tank, or no tank of the house's"
              + " number of products, less one for each soil site that its layer owes, brings more"
              + " on all driver weeds at once; but a warning where the last pass that rested on one"
              + " site alone rested on the same, and another is to be had. Where the pass lays a"
              + " layer against it: fewer effective soil sites, by the number for the first layer or"
              + " for an overlapping one; a note where crop, trait, soil and labels leave no more that"
              + " hold the weed by themselves. Foliar and soil are never added, a half is"
              + " shown and not counted, a listed resistance strikes a site. A note for other"
              + " weeds.",
          List.of(
              "Evans et al. 2016, sites per application and glyphosate-resistant waterhemp",
              "Norsworthy et al. 2012, best management practices"),
          "2,4-D choline + glyphosate + S-metolachlor on Palmer amaranth that resists 2 and 9",
          "2,4-D choline + glufosinate on the same field");

  private static final String BY_HAND = "cultivation or hand roguing beside it";

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    Map<WeedId, Integer> asked = facts.foliarSitesAsked();
    for (PassWeed weed : facts.pass().weeds()) {
      WeedPressure pressure = facts.pressure(weed.weed());
      About about = facts.about().withWeed(weed.weed());
      int foliar = weed.stands() ? facts.book().house().minFoliarSites() : 0;
      int effective = weed.effectiveFoliarSites();
      if (pressure.driver().isDriver()) {
        if (effective < asked.getOrDefault(weed.weed(), 0)) {
          out.warn(
              this,
              about,
              () ->
                  facts.restsOnTheSameAgain(weed)
                      ? sameAgain(facts, pressure, weed, foliar)
                      : foliarText(facts, pressure, weed, foliar));
        } else if (effective < foliar) {
          boolean together = effective < facts.foliarSitesAskedAlone(weed.weed());
          out.note(this, about, () -> noMoreInOneTank(facts, pressure, weed, foliar, together));
        }
        int soil =
            HouseTests.soilSitesWanted(
                facts.book().house(), facts.season(), facts.pass().index(), weed.weed());
        int holding = weed.effectiveSoilSites();
        if (holding < facts.soilSitesAsked(weed.weed())) {
          out.warn(this, about, () -> soilText(facts, pressure, weed, soil));
        } else if (holding < soil) {
          out.note(this, about, () -> noMoreInTheSoil(facts, pressure, weed, soil));
        }
      } else if (effective > 0 && effective < foliar) {
        out.note(this, about, () -> foliarText(facts, pressure, weed, foliar));
      }
    }
  }

  private static Text foliarText(PassFacts facts, WeedPressure pressure, PassWeed weed, int asked) {
    return text(
        pressure,
        "foliar",
        weed.foliar(),
        weed.effectiveFoliarSites(),
        asked,
        Offers.foliarSitesOnSmallPlants(facts, pressure),
        remedy(
            weed.foliar(),
            Offers.foliarSites(facts, pressure),
            Offers.foliarSitesOnSmallPlants(facts, pressure)),
        "house rule minFoliarSites");
  }

  /** Labels let no other into the tank, and the season has not brought one in between. */
  private static Text sameAgain(PassFacts facts, WeedPressure pressure, PassWeed weed, int foliar) {
    return Text.of(
            Say.start(pressure.weed().name())
                + " meets one effective foliar site"
                + each(weed.foliar())
                + ", as in the last pass that rested on one alone; the house asks for "
                + foliar
                + ", and where labels let no more into one tank for another site in between.",
            "house rule minFoliarSites; the labels' partner lists")
        .compared(Integer.toString(weed.effectiveFoliarSites()), Integer.toString(foliar))
        .cleared(
            "site " + numbers(others(facts, pressure, weed)) + " in place of it in one of the two");
  }

  /** Sites that the catalog has beside those that are effective in the pass. */
  private static List<Site> others(PassFacts facts, WeedPressure pressure, PassWeed weed) {
    List<Site> others = new ArrayList<>(Offers.foliarSitesOnSmallPlants(facts, pressure));
    weed.foliar().stream().filter(SiteControl::effective).forEach(s -> others.remove(s.site()));
    return others;
  }

  /**
   * @param together whether there would be more for this weed alone
   */
  private static Text noMoreInOneTank(
      PassFacts facts, WeedPressure pressure, PassWeed weed, int asked, boolean together) {
    List<Site> others = others(facts, pressure, weed);
    return Text.of(
            Say.start(pressure.weed().name())
                + " meets "
                + count(weed.effectiveFoliarSites())
                + " effective foliar site"
                + each(weed.foliar())
                + "; the house asks for "
                + asked
                + (others.isEmpty()
                    ? ", and the catalog has no other in this crop and trait."
                    : together
                        ? ", and no tank of "
                            + facts.book().house().maxProducts()
                            + " products with its layer brings more on all driver weeds at once."
                        : ", and labels let no other that works here into one tank."),
            together
                ? "house rules minFoliarSites and maxProducts"
                : "house rule minFoliarSites; the labels' partner lists")
        .compared(Integer.toString(weed.effectiveFoliarSites()), Integer.toString(asked))
        .cleared(
            others.isEmpty()
                ? BY_HAND
                : "site " + numbers(others) + " in another pass of the season");
  }

  private static Text soilText(PassFacts facts, WeedPressure pressure, PassWeed weed, int asked) {
    Set<Site> atBest = facts.offers().soilSites(pressure);
    return text(
        pressure,
        "soil",
        weed.soil(),
        weed.effectiveSoilSites(),
        asked,
        atBest,
        soilRemedy(weed.soil(), Offers.soilSites(facts, pressure), atBest),
        "house rule minSoilSites");
  }

  private static Text noMoreInTheSoil(
      PassFacts facts, WeedPressure pressure, PassWeed weed, int asked) {
    List<Site> others = new ArrayList<>(facts.offers().soilSites(pressure));
    weed.soil().stream().filter(SiteControl::effective).forEach(s -> others.remove(s.site()));
    return Text.of(
            Say.start(pressure.weed().name())
                + " meets "
                + count(weed.effectiveSoilSites())
                + " effective soil site"
                + each(weed.soil())
                + "; the house asks for "
                + asked
                + (others.isEmpty()
                    ? ", and the catalog has no other that holds it by itself in this crop, trait and"
                        + " soil."
                    : ", and labels let no other that holds it into one tank."),
            "house rule minSoilSites; the catalog's responses and labels")
        .compared(Integer.toString(weed.effectiveSoilSites()), Integer.toString(asked))
        .cleared(
            "partners that hold it in part, and other sites on the leaves of what comes up through"
                + " the layer");
  }

  /**
   * @param atBest sites that the catalog has for it when all is at its best
   */
  private static Text text(
      WeedPressure pressure,
      String kind,
      List<SiteControl> sites,
      int effective,
      int asked,
      Set<Site> atBest,
      String remedy,
      String source) {
    boolean impossible = atBest.size() < asked;
    String best = Say.list(atBest.stream().map(Site::toString).toList());
    return Text.of(
            Say.start(pressure.weed().name())
                + " meets "
                + count(effective)
                + " effective "
                + kind
                + (effective == 1 ? " site" : " sites")
                + each(sites)
                + "; the house asks for "
                + asked
                + "."
                + (impossible
                    ? " More cannot be had in this crop and trait: "
                        + (atBest.isEmpty() ? "the catalog has none." : "only site " + best + ".")
                    : ""),
            source)
        .compared(Integer.toString(effective), Integer.toString(asked))
        .cleared(remedy);
  }

  /**
   * Sites in the tank that fall short want their full rate; others may be added, or come sooner.
   */
  private static String soilRemedy(List<SiteControl> sites, Set<Site> offered, Set<Site> atBest) {
    List<Site> others = new ArrayList<>(offered);
    List<Site> elsewhen = new ArrayList<>(atBest);
    elsewhen.removeAll(offered);
    sites.forEach(s -> others.remove(s.site()));
    sites.forEach(s -> elsewhen.remove(s.site()));
    List<Site> tooWeak = tooWeak(sites, atBest);
    List<String> ways = new ArrayList<>();
    if (!tooWeak.isEmpty()) {
      ways.add("the top of the label's range for site " + numbers(tooWeak));
    }
    if (!others.isEmpty()) {
      ways.add("a partner of site " + numbers(others));
    }
    if (!elsewhen.isEmpty()) {
      ways.add("site " + numbers(elsewhen) + " at another time");
    }
    return ways.isEmpty() ? BY_HAND : String.join(", or ", ways);
  }

  private static List<Site> tooWeak(List<SiteControl> sites, Set<Site> atBest) {
    return sites.stream()
        .filter(s -> !s.struck() && !s.effective() && !s.slowed() && atBest.contains(s.site()))
        .map(SiteControl::site)
        .toList();
  }

  /** Sites in the tank that fall short want smaller plants or a full rate; others may be added. */
  private static String remedy(List<SiteControl> sites, Set<Site> offered, Set<Site> atBest) {
    List<Site> tooWeak = tooWeak(sites, atBest);
    List<Site> slowed = sites.stream().filter(SiteControl::slowed).map(SiteControl::site).toList();
    List<Site> others = new ArrayList<>(offered);
    sites.forEach(s -> others.remove(s.site()));
    List<Site> onSmall = new ArrayList<>(atBest);
    onSmall.removeAll(offered);
    sites.forEach(s -> onSmall.remove(s.site()));
    List<String> ways = new ArrayList<>();
    if (!tooWeak.isEmpty()) {
      ways.add("smaller plants or a full rate for site " + numbers(tooWeak));
    }
    if (!slowed.isEmpty()) {
      ways.add("warmer days for site " + numbers(slowed));
    }
    if (!others.isEmpty()) {
      ways.add("a partner of site " + numbers(others));
    }
    if (!onSmall.isEmpty()) {
      ways.add("small plants and a partner of site " + numbers(onSmall));
    }
    return ways.isEmpty() ? BY_HAND : String.join(", or ", ways);
  }

  private static String each(List<SiteControl> sites) {
    return sites.isEmpty()
        ? ""
        : " (" + String.join(", ", sites.stream().map(SingleSiteRule::words).toList()) + ")";
  }

  private static String numbers(List<Site> sites) {
    return String.join(" or ", sites.stream().map(Site::toString).toList());
  }

  private static String count(int n) {
    return n == 0 ? "no" : n == 1 ? "one" : Integer.toString(n);
  }

  private static String words(SiteControl s) {
    return "site "
        + s.site()
        + (s.watched()
            ? ": " + Say.SUSPECTED
            : s.struck() ? ": resisted" : ": " + Say.pct(Math.rint(s.controlPct())))
        + (!s.half() ? "" : s.slowed() ? ", a half in the cold" : ", a half");
  }
}
