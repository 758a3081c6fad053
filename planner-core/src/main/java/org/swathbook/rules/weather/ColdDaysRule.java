package org.swathbook.rules.weather;

import java.util.List;
import org.swathbook.catalog.Ingredient;
import org.swathbook.control.ColdDay;
import org.swathbook.control.ColdDays;
import org.swathbook.program.ActiveDose;
import org.swathbook.rules.About;
import org.swathbook.rules.Findings;
import org.swathbook.rules.ProgramFacts;
import org.swathbook.rules.ProgramRule;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;

/** A planned pass that is mostly sprayed in the cold, with what the cold slows. */
public final class ColdDaysRule implements ProgramRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("cold-days"),
          Severity.WARN,
          "Is a pass planned for days that are too cold for what is in it?",
          "In a plan: a pass on weeds that stand, with an active of site 9, 10 or 27 on leaves,"
              + " where over the weather years more than half of the days no more than three from"
              + " those of the pass are under 60 F or follow a night under 40 F. The control told"
              + " of it does not reckon with cold; those sites count as half effective.",
          List.of(Say.COMMON_PRACTICE),
          "glyphosate on weeds that stand in March, 41 F by day",
          "the same on a June day of 80 F");

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ProgramFacts facts, Findings out) {
    ColdDays cold = ColdDays.of(facts.traces());
    for (PassOutcome pass : facts.season().passes()) {
      List<String> slowed = slowed(pass);
      if (!slowed.isEmpty() && cold.isMostly(pass.timing())) {
        double pct = 100 * cold.about(pass.timing());
        out.warn(this, About.PROGRAM.withPass(pass.index()), () -> text(slowed, pct));
      }
    }
  }

  /** Names of what works on leaves here and is slow in the cold; a pass that is made is past it. */
  private static List<String> slowed(PassOutcome pass) {
    return pass.made() || pass.weeds().stream().noneMatch(PassWeed::stands)
        ? List.of()
        : pass.mix().actives().stream()
            .map(ActiveDose::ingredient)
            .filter(Ingredient::hasFoliarActivity)
            .filter(ColdDay::slows)
            .map(Ingredient::name)
            .distinct()
            .toList();
  }

  private static Text text(List<String> slowed, double coldPct) {
    String days = Say.pct(Math.rint(coldPct)) + " of the days";
    return Text.of(
            "Cold slows "
                + Say.list(slowed)
                + ", and over the weather years "
                + days
                + " no more than three from those of this pass are under 60 F or follow a night"
                + " under 40 F. The control told here does not reckon with that, and such a site"
                + " counts as half an effective one.",
            Say.COMMON_PRACTICE)
        .compared("cold on " + days, "cold on at most half of them")
        .cleared("a later date, or partners that the cold does not slow");
  }
}
