package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.measure.Money;
import org.swathbook.plan.FrontProgram;

/** What more money buys. */
final class FrontText {
  /** A step that brings less than this on an acre, and no more control, is left out of the page. */
  private static final Money WORTH_A_LINE = Money.ofDollars(2);

  private static final double STEP_POINTS = 5;

  private FrontText() {}

  static void on(Page page, List<FrontProgram> front) {
    List<FrontProgram> shown = steps(front);
    if (shown.size() < 2) {
      return;
    }
    page.line("What more money buys");
    Table table = new Table(2, "rrrrrl");
    table.row("cost", "loss", "net, $/acre", "worst site gone, %", "passes", "breaks");
    rows(shown).forEach(table::row);
    table.on(page);
    page.wrapped(2, NOTE);
    page.blank();
  }

  /** What the steps are, and are not. */
  static final String NOTE =
      "Programs met that no other met beats in cost, loss and control with the worst site gone;"
          + " steps of less than $"
          + WORTH_A_LINE
          + " are left out. The foot of the plan says over which passes no other does. Only the programs above are judged by the whole rule book.";

  /** Cost, loss, net return, control with the worst site gone, passes, broken house rules. */
  static List<List<String>> rows(List<FrontProgram> steps) {
    List<List<String>> out = new ArrayList<>();
    for (FrontProgram p : steps) {
      out.add(
          List.of(
              Figures.money(p.cost()),
              Figures.money(p.loss()),
              p.net().map(Figures::money).orElse("unknown"),
              Figures.percent(p.weakestControlPct()),
              Integer.toString(p.passes().size()),
              p.brokenRules().isEmpty() ? "no house rule" : String.join(", ", p.brokenRules())));
    }
    return out;
  }

  /** From the cheapest on, each that nets more than all before or holds more with a site gone. */
  static List<FrontProgram> steps(List<FrontProgram> front) {
    List<FrontProgram> out = new ArrayList<>();
    Money best = null;
    double level = -1;
    for (FrontProgram p : front) {
      Money worth = Money.ZERO.minus(p.cost()).minus(p.loss());
      double held = Math.floor(p.weakestControlPct() / STEP_POINTS);
      if (best == null || worth.minus(best).compareTo(WORTH_A_LINE) >= 0 || held > level) {
        out.add(p);
        best = best == null || worth.compareTo(best) > 0 ? worth : best;
        level = Math.max(level, held);
      }
    }
    return out;
  }
}
