package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.rules.RulePage;

/** The report of {@code rules}. */
public final class RulesText {
  private RulesText() {}

  /** Every rule on a line or two. */
  public static String list(List<RulePage> rules) {
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
    return page.toString();
  }

  /** One rule in full. */
  public static String one(RulePage rule) {
    Page page = new Page();
    page.line(rule.id().value());
    page.wrapped(0, rule.question());
    page.blank();
    Table table = new Table(0, "ll");
    table.row("Severity", "up to " + rule.severity().word());
    table.row("Looks at", looksAt(rule.scope()));
    table.row("Objects when", rule.trigger());
    examples(rule.trips()).forEach(e -> table.row("Objects to", e));
    examples(rule.silent()).forEach(e -> table.row("Lets pass", e));
    rule.sources().forEach(s -> table.row("Source", s));
    table.on(page);
    return page.toString();
  }

  /** Examples of a card are parted by semicolons. */
  private static List<String> examples(String all) {
    return List.of(all.split("; ", -1));
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
