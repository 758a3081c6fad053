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
import org.swathbook.season.outcome.PassOutcome;

/** A program whose passes do not find their day in too many years. */
public final class WindowConfidenceRule implements ProgramRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("window-confidence"),
          Severity.WARN,
          "In how many years does every pass find a suitable day inside its windows?",
          "In a weather year a pass finds its day when the first suitable one from its date on lies inside"
              + " all its windows, and the first one for a sprayer that comes the house's queue of days late"
              + " does too. The share of the years in which every pass does is below the house's"
              + " windowConfidence. With fewer than 8 years a note says that they are too few.",
          List.of(Say.COMMON_PRACTICE),
          "a pass with few open days, 46 % of the years",
          "a wide window, 94 % of the years");

  private static final int ENOUGH_YEARS = 8;

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(ProgramFacts facts, Findings out) {
    int years = facts.season().years().size();
    if (years < ENOUGH_YEARS && !facts.season().passes().isEmpty()) {
      out.note(
          this,
          About.PROGRAM,
          () ->
              Text.of(
                  "Only "
                      + years
                      + (years == 1 ? " weather year: too few" : " weather years: too few")
                      + " to say in how many the passes find their days.",
                  "house rule windowConfidence"));
    }
    if (HouseTests.isShortOfWindows(facts.book().house(), facts.season())) {
      out.warn(this, About.PROGRAM, () -> text(facts));
    }
  }

  private static Text text(ProgramFacts facts) {
    String asked = Say.share(facts.book().house().windowConfidence());
    String actual = Say.pct(facts.season().windowConfidencePct());
    List<String> missed =
        facts.season().passes().stream()
            .filter(p -> !p.missedYears().isEmpty())
            .map(WindowConfidenceRule::words)
            .toList();
    return Text.of(
            "Every pass finds its day in "
                + actual
                + " of the weather years"
                + (missed.isEmpty() ? "" : " (" + String.join(", ", missed) + ")")
                + "; the house asks for "
                + asked
                + ".",
            "house rule windowConfidence")
        .compared(actual, asked)
        .cleared("another date, a mix with a wider window, or a second sprayer day");
  }

  private static String words(PassOutcome pass) {
    int n = pass.missedYears().size();
    return "pass " + (pass.index() + 1) + " missed in " + (n == 1 ? "1 year" : n + " years");
  }
}
