package org.swathbook.rules.mixture;

import java.util.List;
import org.swathbook.book.Biotype;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.measure.Unit;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PassRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.PassWeed;
import org.swathbook.season.SiteControl;

/** A mix that works on a weed only by sites that some of its plants resist. */
public final class ResistantBiotypeRule implements PassRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("resistant-biotype"),
          Severity.WARN,
          "Is a part of the weed's plants left alone by everything that works on the rest?",
          "Every foliar, or every soil, site of the pass that takes half or more of a weed is on its"
              + " list of resistances: on the plants that resist them all, no site left does half. The"
              + " message gives their share and number, or says that none is listed with all of them, or that"
              + " one is only suspected, by the watch list.",
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
      if (weed.stands() && isLeftAlone(weed.foliar())) {
        out.warn(
            this,
            about,
            () -> text(facts, pressure, weed.foliar(), "foliar", weed.medianPerM2(), "standing"));
      }
      if (isLeftAlone(weed.soil())) {
        out.warn(
            this,
            about,
            () -> text(facts, pressure, weed.soil(), "soil", pressure.perM2(), "of the season"));
      }
    }
  }

  private static boolean isLeftAlone(List<SiteControl> sites) {
    List<SiteControl> counted = countedOn(sites);
    return !counted.isEmpty() && counted.stream().allMatch(SiteControl::struck);
  }

  private static List<SiteControl> countedOn(List<SiteControl> sites) {
    return sites.stream().filter(s -> s.controlPct() >= COUNTED_ON_PCT).toList();
  }

  private static Text text(
      PassFacts facts,
      WeedPressure pressure,
      List<SiteControl> sites,
      String kind,
      double perM2,
      String which) {
    List<Ingredient> counted =
        countedOn(sites).stream().map(s -> facts.book().catalog().ingredient(s.best())).toList();
    double share =
        pressure.biotypes().stream()
            .filter(b -> resistsAll(b, counted))
            .mapToDouble(Biotype::share)
            .sum();
    double left = share * perM2 * Unit.ACRE.toSi(1);
    String names =
        Say.list(counted.stream().map(i -> i.name() + " (site " + i.site() + ")").toList());
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
                    : unlike(sites)),
            isWatched(sites)
                ? "the field's list of resistances and watch.csv"
                : "the field's list of resistances")
        .compared(
            share > 0
                ? Say.share(share) + " resist"
                : isWatched(sites) ? "each is resisted or suspected" : "each is resisted",
            "none")
        .cleared("a partner of another " + kind + " site; a sample if it is only suspected");
  }

  private static boolean isWatched(List<SiteControl> sites) {
    return countedOn(sites).stream().anyMatch(SiteControl::watched);
  }

  /** Of sites that no plants are listed to resist together; what is only watched has no share. */
  private static String unlike(List<SiteControl> sites) {
    if (!isWatched(sites)) {
      return "a part of its plants resists each of them; none is listed with all.";
    }
    String listed = names(countedOn(sites).stream().filter(s -> !s.watched()).toList());
    return (listed.isEmpty() ? "" : "a part of its plants resists " + listed + ", and ")
        + "resistance to "
        + names(countedOn(sites).stream().filter(SiteControl::watched).toList())
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
