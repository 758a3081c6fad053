package org.swathbook.rules.mixture;

import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.book.Biotype;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.measure.Unit;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.Rated;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SiteControl;

/** A mix that works on a weed only by sites that some of its plants resist. */
public final class ResistantBiotypeRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("resistant-biotype"),
          Severity.WARN,
          "Is a part of the weed's plants left alone by everything that works on the rest?",
          "Every foliar, or every soil, site of the pass that takes half or more of a weed's susceptible"
              + " plants is on its list of resistances: on the plants that resist them all, no site left does half. The"
              + " message gives their share and number, or says that none is listed with all of them, or"
              + " that one is only suspected, by the watch list.",
          List.of(Say.COMMON_PRACTICE),
          "glyphosate alone on kochia that resists site 9",
          "glyphosate + fluroxypyr on the same kochia");

  /** A site that takes less than this of a weed is not counted on for it (percent). */
  private static final double COUNTED_ON_PCT = 50;

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(PassFacts facts, Findings out) {
    for (PassWeed weed : facts.pass().weeds()) {
      WeedPressure pressure = facts.pressure(weed.weed());
      About about = facts.about().withWeed(weed.weed());
      List<SiteControl> foliar = countedOn(facts, pressure, weed.foliar(), false);
      if (weed.stands() && isLeftAlone(foliar)) {
        out.warn(
            this,
            about,
            () -> text(facts, pressure, foliar, "foliar", weed.medianPerM2(), "standing"));
      }
      List<SiteControl> soil = countedOn(facts, pressure, weed.soil(), true);
      if (isLeftAlone(soil)) {
        out.warn(
            this,
            about,
            () -> text(facts, pressure, soil, "soil", pressure.perM2(), "of the season"));
      }
    }
  }

  private static boolean isLeftAlone(List<SiteControl> counted) {
    return !counted.isEmpty() && counted.stream().allMatch(SiteControl::struck);
  }

  /**
   * What the table says of susceptible plants decides, and not the mean over all that stand: that
   * is small just where the most resist, and where they are too tall another rule speaks.
   */
  private static List<SiteControl> countedOn(
      PassFacts facts, WeedPressure pressure, List<SiteControl> sites, boolean soil) {
    return sites.stream().filter(s -> rated(facts, pressure, s, soil) >= COUNTED_ON_PCT).toList();
  }

  private static double rated(
      PassFacts facts, WeedPressure pressure, SiteControl site, boolean soil) {
    Ingredient best = facts.book().catalog().ingredient(site.best());
    OptionalDouble pct =
        soil ? Rated.soilPct(facts, pressure, best) : Rated.foliarPct(facts, pressure, best);
    return Math.max(site.controlPct(), pct.orElse(0));
  }

  private static Text text(
      PassFacts facts,
      WeedPressure pressure,
      List<SiteControl> counted,
      String kind,
      double perM2,
      String which) {
    List<Ingredient> actives =
        counted.stream().map(s -> facts.book().catalog().ingredient(s.best())).toList();
    double share =
        pressure.biotypes().stream()
            .filter(b -> resistsAll(b, actives))
            .mapToDouble(Biotype::share)
            .sum();
    double left = share * perM2 * Unit.ACRE.toSi(1);
    String names =
        Say.list(actives.stream().map(i -> i.name() + " (site " + i.site() + ")").toList());
    return Text.of(
            Say.start(pressure.weed().name())
                + " is met by "
                + names
                + " alone, and "
                + (share > 0
                    ? Say.share(share)
                        + " of its plants resist that: "
                        + Say.perAcre(left)
                        + " "
                        + which
                        + " on an acre."
                    : unlike(counted)),
            isWatched(counted)
                ? "the field's list of resistances and watch.csv"
                : "the field's list of resistances")
        .compared(
            share > 0
                ? Say.share(share) + " resist"
                : isWatched(counted) ? "each is resisted or suspected" : "each is resisted",
            "none")
        .cleared("a partner of another " + kind + " site; a sample if it is only suspected");
  }

  private static boolean isWatched(List<SiteControl> counted) {
    return counted.stream().anyMatch(SiteControl::watched);
  }

  /** Of sites that no plants are listed to resist together; what is only watched has no share. */
  private static String unlike(List<SiteControl> counted) {
    if (!isWatched(counted)) {
      return "a part of its plants resists each of them; none is listed with all.";
    }
    String listed = names(counted.stream().filter(s -> !s.watched()).toList());
    return (listed.isEmpty() ? "" : "a part of its plants resists " + listed + ", and ")
        + "resistance to "
        + names(counted.stream().filter(SiteControl::watched).toList())
        + " is "
        + Say.SUSPECTED
        + ", in how many plants is not known.";
  }

  private static String names(List<SiteControl> sites) {
    return Say.list(sites.stream().map(s -> "site " + s.site()).toList());
  }

  private static boolean resistsAll(Biotype b, List<Ingredient> actives) {
    return actives.stream().allMatch(i -> b.resists().stream().anyMatch(r -> r.concerns(i)));
  }
}
