package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.catalog.Catalog;
import org.swathbook.measure.Money;
import org.swathbook.plan.WithoutPart;
import org.swathbook.season.outcome.SeasonOutcome;

/** Why each pass and product of a program is there. */
final class WithoutText {
  private WithoutText() {}

  static void on(Page page, Catalog catalog, SeasonOutcome outcome, List<WithoutPart> parts) {
    if (parts.isEmpty()) {
      return;
    }
    page.line("Why each is there: what goes wrong without it");
    Table table = new Table(2, "lrll");
    table.row("without", "net, $/acre", "hits hardest, control %", "then broken");
    rows(catalog, outcome, parts).forEach(table::row);
    table.on(page);
    page.blank();
  }

  /** What is left out, and what that does to net return, control and house rules. */
  static List<List<String>> rows(Catalog catalog, SeasonOutcome outcome, List<WithoutPart> parts) {
    List<List<String>> out = new ArrayList<>();
    for (WithoutPart p : parts) {
      out.add(
          List.of(
              p.dose()
                  .map(d -> "  " + d.product().id())
                  .orElse(
                      "pass "
                          + (p.pass() + 1)
                          + ", "
                          + Figures.day(outcome.passes().get(p.pass()).planned())),
              p.net().map(WithoutText::signed).orElse("unknown"),
              p.worstHit()
                  .map(
                      w ->
                          catalog.weed(w).name()
                              + " "
                              + Figures.percent(p.controlPct())
                              + " to "
                              + Figures.percent(p.controlPctWithout()))
                  .orElse("none"),
              p.breaks().isEmpty() ? "" : String.join(", ", p.breaks())));
    }
    return out;
  }

  private static String signed(Money m) {
    return (m.cents() > 0 ? "+" : "") + Figures.money(m);
  }
}
