package org.swathbook.rules.stewardship;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Quantity;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.Offers;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.WeedOutcome;

/** A season that fails on a driver weed as soon as one site no longer works. */
public final class DependsOnOneSiteRule implements ProgramRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("depends-on-one-site"),
          Severity.WARN,
          "Does the season still control the driver weed without its most needed site?",
          "With the site gone from all passes whose loss hurts most, control of a driver weed is"
              + " below the house's oneSiteGone; a note within 3 points above it, or where more"
              + " than ten times as many plants then survive.",
          List.of("Evans et al. 2016, mixing sites and glyphosate-resistant waterhemp"),
          "Palmer amaranth controlled to 96 %, and to 61 % without site 14",
          "Palmer amaranth controlled to 97 % with any one site gone");

  private static final double NEAR_PCT = 3;
  private static final double MANY_TIMES = 10;

  /** Less than a plant on an acre is none. */
  private static final double NONE_PER_ACRE = 1;

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ProgramFacts facts, Findings out) {
    double least = 100 * facts.book().house().oneSiteGone();
    for (WeedOutcome weed : facts.season().weeds()) {
      if (!weed.pressure().driver().isDriver()) {
        continue;
      }
      About about = About.PROGRAM.withWeed(weed.pressure().weed().id());
      if (HouseTests.isLostWithOneSite(facts.book().house(), weed)) {
        out.warn(this, about, () -> text(facts, weed, least));
      } else if (Quantity.exceeds(least + NEAR_PCT, weed.controlPctWithoutWeakest())
          || manyMoreSurvive(weed)) {
        out.note(this, about, () -> text(facts, weed, least));
      }
    }
  }

  private static boolean manyMoreSurvive(WeedOutcome weed) {
    return weed.survivorsPerAcreWithoutWeakest() >= NONE_PER_ACRE
        && Quantity.exceeds(
            weed.survivorsPerAcreWithoutWeakest(), MANY_TIMES * weed.survivorsPerAcre());
  }

  private static Text text(ProgramFacts facts, WeedOutcome weed, double least) {
    String without =
        weed.weakestSite().map(s -> "without site " + s).orElse("with no site at work");
    String survivors =
        manyMoreSurvive(weed)
            ? "; "
                + SurvivorsRule.plants(weed.survivorsPerAcreWithoutWeakest())
                + (Say.perAcre(weed.survivorsPerAcreWithoutWeakest()).equals("1")
                    ? " then survives on an acre, with it "
                    : " then survive on an acre, with it ")
                + Say.perAcre(weed.survivorsPerAcre())
            : "";
    return Text.of(
            Say.start(weed.pressure().weed().name())
                + ": "
                + Say.pct(weed.controlPct())
                + " controlled, "
                + Say.pct(weed.controlPctWithoutWeakest())
                + " "
                + without
                + survivors
                + "; the house asks for "
                + Say.pct(least)
                + " with any one site gone.",
            "house rule oneSiteGone")
        .compared(Say.pct(weed.controlPctWithoutWeakest()), Say.pct(least))
        .cleared(remedy(facts, weed));
  }

  /** What might do; whether it does, and for how much, only a walk of the season tells. */
  private static String remedy(ProgramFacts facts, WeedOutcome weed) {
    NavigableSet<Site> foliar = new TreeSet<>();
    NavigableSet<Site> soil = new TreeSet<>();
    for (PassOutcome pass : facts.season().passes()) {
      if (!pass.made()) {
        PassFacts of = facts.of(pass);
        for (PassWeed met : pass.weeds()) {
          if (met.weed().equals(weed.pressure().weed().id())) {
            if (met.stands()) {
              foliar.addAll(Offers.foliarSites(of, weed.pressure()));
            }
            soil.addAll(Offers.soilSites(of, weed.pressure()));
          }
        }
      }
    }
    weed.weakestSite().ifPresent(foliar::remove);
    weed.weakestSite().ifPresent(soil::remove);
    List<String> ways = new ArrayList<>();
    if (!foliar.isEmpty()) {
      ways.add("through leaves site " + numbers(foliar));
    }
    if (!soil.isEmpty()) {
      ways.add("through the soil site " + numbers(soil));
    }
    return "another effective site"
        + weed.weakestSite().map(s -> " beside site " + s).orElse("")
        + (ways.isEmpty()
            ? ", in the soil or through the leaves"
            : ": " + String.join(", ", ways) + "; plan tells which is enough and what it costs");
  }

  private static String numbers(NavigableSet<Site> sites) {
    return String.join(" or ", sites.stream().map(Site::toString).toList());
  }
}
