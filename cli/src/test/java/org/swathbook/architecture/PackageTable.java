package org.swathbook.architecture;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Every package of the program and what it may use. A row names its direct neighbors and may use
 * all that those may use; it may name only rows above it, so there can be no cycle. A package that
 * is not named belongs to the row of the nearest package around it.
 */
final class PackageTable {
  static final String ROOT = "org.swathbook";

  private final Map<String, Set<String>> allowed = new LinkedHashMap<>();

  PackageTable() {
    // catalog
    row("measure");
    row("source", "measure");
    row("catalog", "measure");
    row("catalog.file", "catalog", "source");
    row("catalog.review", "catalog.file");
    // planner-core
    // the reference's cards lie below all models, since each model's own class makes them
    row("model");
    row("weather", "measure", "model");
    row("program", "catalog");
    row("calibration");
    row("book", "program", "weather");
    row("book.file", "book", "catalog.file", "source");
    row("ledger", "book");
    row("growth", "book", "weather");
    row("control", "growth", "program");
    row("season.loss", "growth");
    row("season.outcome", "growth", "program");
    row("season", "control", "ledger", "season.loss", "season.outcome");
    row("tank", "program", "book");
    row("rules", "season", "ledger", "tank");
    row("check", "rules");
    row("plan.choice", "check", "season");
    row("plan.draft", "plan.choice");
    row("plan.climb", "plan.draft");
    row("plan.exact", "plan.draft");
    row("plan.bound", "plan.draft");
    row("plan", "plan.climb", "plan.exact", "plan.bound");
    row("plan.compare", "plan.choice");
    row("plan.change", "plan.draft");
    row("plan.keep", "plan", "plan.compare", "plan.change");
    // what then helps is sought with the planner's own doses and dates and judged by all rules
    row("stress", "plan.change");
    row("escapes", "plan.choice");
    row("audit", "check", "season");
    row("supply", "book");
    // cli: rendering sees results, never commands
    row("cli.report", allowed.keySet().toArray(String[]::new));
    String[] below = allowed.keySet().toArray(String[]::new);
    row("cli.text", below);
    row("cli.html", below).add("cli.text");
    row("cli.json", below);
    row("cli.xlsx", below);
    row("cli.terminal", "cli.text");
    // what commands have done knows no option and renders nothing
    row("cli.work", below).add("cli.terminal");
    row("cli", allowed.keySet().toArray(String[]::new));
    // last: the build runs it, and nothing of the program may use it
    row("build");
  }

  private Set<String> row(String name, String... uses) {
    Set<String> all = new LinkedHashSet<>();
    for (String use : uses) {
      Set<String> further = allowed.get(use);
      if (further == null) {
        throw new IllegalArgumentException(name + " names " + use + ", which is no row above it");
      }
      all.add(use);
      all.addAll(further);
    }
    all.add(name);
    allowed.put(name, all);
    return all;
  }

  /** Names of all rows. */
  Set<String> names() {
    return Set.copyOf(allowed.keySet());
  }

  /** The row that a package belongs to, or nothing where no row is around it. */
  Optional<String> rowOf(String packageName) {
    return allowed.keySet().stream()
        .filter(row -> (packageName + ".").startsWith(ROOT + "." + row + "."))
        .max(Comparator.comparingInt(String::length));
  }

  /** Whether a class in the first package may use one in the second; both must have a row. */
  boolean permits(String from, String to) {
    return allowed
        .getOrDefault(rowOf(from).orElseThrow(), Set.of())
        .contains(rowOf(to).orElseThrow());
  }
}
