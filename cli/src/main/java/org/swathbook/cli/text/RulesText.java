package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.rules.RulePage;
import org.swathbook.rules.label.RulesToCome;

/** The report of {@code rules}. */
public final class RulesText {
  private RulesText() {}

  /** Every rule on a line or two, and those that are still to come. */
  public static String list(List<RulePage> rules, List<RulesToCome.Planned> toCome) {
    Page page = new Page();
    page.line("Swathbook · " + Figures.counted(rules.size(), "rule", "rules"));
    page.wrapped(
        0,
        "Each makes findings up to its severity: block, warn, ask or note. 'swathbook rules ID' shows"
            + " one in full.");
    page.blank();
    Table table = new Table(0, "lll");
    rules.forEach(r -> table.row(r.severity().word(), r.id().value(), r.question()));
    table.on(page);
    if (!toCome.isEmpty()) {
      page.blank();
      page.wrapped(
          0,
          "Not written yet; every verdict says that they were not checked. Check them yourself:");
      page.blank();
      Table planned = new Table(0, "ll");
      toCome.forEach(r -> planned.row(r.id().value(), r.question()));
      planned.on(page);
    }
    return page.toString();
  }

  /** One rule in full. */
  public static String one(RulePage rule) {
    Page page = new Page();
    page.line(rule.id().value());
    page.wrapped(0, rule.question());
    page.blank();
    Table table = new Table(0, "ll");
    table.row("Severity", rule.severity().word());
    table.row("Looks at", looksAt(rule.scope()));
    table.row("Objects when", rule.trigger());
    table.row("Objects to", rule.trips());
    table.row("Lets pass", rule.silent());
    rule.sources().forEach(s -> table.row("Source", s));
    table.on(page);
    return page.toString();
  }

  private static String looksAt(String scope) {
    return switch (scope) {
      case "use" -> "one product on one day in one field";
      case "pair" -> "two products in one tank";
      case "pass" -> "one trip of the sprayer";
      case "day" -> "the day of spraying";
      case "sequence" -> "passes of one active or site, in order";
      case "program" -> "the whole season";
      default -> scope;
    };
  }
}
