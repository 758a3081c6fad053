package org.swathbook.rules.stewardship;

import java.util.List;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.WeedOutcome;

/** A season that fails on a driver weed as soon as one site no longer works. */
public final class DependsOnOneSiteRule implements ProgramRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("depends-on-one-site"),
          Severity.WARN,
          "Does the season still control the driver weed without its most needed site?",
          "With the site gone from all passes whose loss hurts most, control of a driver weed is"
              + " below the house's oneSiteGone; a note within 3 points above it.",
          List.of("Evans et al. 2016, mixing sites and glyphosate-resistant waterhemp"),
          "Palmer amaranth controlled to 96 %, and to 61 % without site 14",
          "Palmer amaranth controlled to 97 % with any one site gone");

  private static final double NEAR_PCT = 3;

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
        out.warn(this, about, () -> text(weed, least));
      } else if (weed.controlPctWithoutWeakest() < least + NEAR_PCT) {
        out.note(this, about, () -> text(weed, least));
      }
    }
  }

  private static Text text(WeedOutcome weed, double least) {
    String without =
        weed.weakestSite().map(s -> "without site " + s).orElse("with no site at work");
    return Text.of(
            Say.start(weed.pressure().weed().name())
                + ": "
                + Say.pct(weed.controlPct())
                + " controlled, "
                + Say.pct(weed.controlPctWithoutWeakest())
                + " "
                + without
                + "; the house asks for "
                + Say.pct(least)
                + " with any one site gone.",
            "house rule oneSiteGone")
        .compared(Say.pct(weed.controlPctWithoutWeakest()), Say.pct(least))
        .cleared(
            "another effective site"
                + weed.weakestSite().map(s -> " beside site " + s).orElse("")
                + ", in the soil or through the leaves");
  }
}
