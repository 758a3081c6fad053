package org.swathbook.rules.stewardship;

import java.util.List;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.WeedOutcome;

/** A weed that the whole season leaves in numbers. */
public final class WeedNotCoveredRule implements ProgramRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("weed-not-covered"),
          Severity.WARN,
          "Does the season control every weed of the field?",
          "Season control of a driver weed below the house's seasonControl, of another weed below"
              + " its otherControl; a note for another weed below 1 plant/m². Where nobody has"
              + " stated what an active does to the weed, it is asked, and counts as nothing.",
          List.of(Say.COMMON_PRACTICE),
          "shattercane controlled to 40 % in sorghum that tolerates no grass herbicide",
          "velvetleaf, 3 plants/m² and no driver, controlled to 94 %");

  private static final double FEW_PER_M2 = 1;

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ProgramFacts facts, Findings out) {
    for (WeedOutcome weed : facts.season().weeds()) {
      if (!HouseTests.isShortOfControl(facts.book().house(), weed)) {
        continue;
      }
      About about = About.PROGRAM.withWeed(weed.pressure().weed().id());
      boolean few = !weed.pressure().driver().isDriver() && weed.pressure().perM2() < FEW_PER_M2;
      out.add(this, few ? Severity.NOTE : Severity.WARN, about, () -> text(facts, weed));
      for (String active : weed.unknownActives()) {
        out.ask(
            this,
            about,
            () ->
                new Lookup(
                    "control of " + weed.pressure().weed().name() + " by " + active,
                    "a response table; then a row of catalog/responses.csv"));
      }
    }
  }

  private static Text text(ProgramFacts facts, WeedOutcome weed) {
    double asked = HouseTests.controlAskedPct(facts.book().house(), weed);
    boolean driver = weed.pressure().driver().isDriver();
    return Text.of(
            Say.start(weed.pressure().weed().name())
                + " is controlled to "
                + Say.pct(weed.controlPct())
                + " ("
                + Say.pct(weed.worstYearControlPct())
                + " in the worst year); the house asks for "
                + Say.pct(asked)
                + ".",
            driver ? "house rule seasonControl" : "house rule otherControl")
        .compared(Say.pct(weed.controlPct()), Say.pct(asked))
        .cleared("an active that works on it, row cultivation, or roguing");
  }
}
