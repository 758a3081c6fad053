package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.program.ActiveDose;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/** A program in a few lines, beside another that is shown in full. */
final class AlternativeText {
  private AlternativeText() {}

  static void on(Page page, PlannedProgram program) {
    on(page, program, program.givesUp());
    page.blank();
  }

  /** The same with other words on what it gives up, and no blank line after it. */
  static void on(Page page, PlannedProgram program, String givesUp) {
    SeasonOutcome outcome = program.outcome();
    page.apart(
        "  " + program.name(),
        ProgramText.money(outcome) + "; " + program.judgement().verdict().word());
    passes(page, 4, outcome);
    page.wrapped(4, 6, "control, mean (worst year): " + ProgramText.drivers(outcome));
    page.wrapped(4, 6, ProgramText.broken(program.judgement()));
    if (!givesUp.isBlank()) {
      page.wrapped(4, 6, "against the first program: " + givesUp);
    }
  }

  /** Date and actives of each pass. */
  static void passes(Page page, int indent, SeasonOutcome outcome) {
    Table passes = new Table(indent, "rl");
    outcome.passes().forEach(p -> passes.row(row(p)));
    passes.on(page);
  }

  static List<String> row(PassOutcome p) {
    return List.of(
        Figures.day(p.planned()),
        actives(p)
            + (p.made() ? " (made)" : "")
            + (p.missedYears().isEmpty()
                ? ""
                : " (missed in " + Figures.years(p.missedYears()) + ")"));
  }

  private static String actives(PassOutcome pass) {
    return String.join(
            ", ",
            pass.mix().actives().stream()
                .map((ActiveDose a) -> a.ingredient().name() + " " + rate(a.lbPerAcre()))
                .toList())
        + " lb/acre";
  }

  /** Some actives go on by grams: their rate is no zero. */
  private static String rate(double lbPerAcre) {
    return Numbers.decimals(lbPerAcre, lbPerAcre < 0.05 ? 4 : 2);
  }
}
