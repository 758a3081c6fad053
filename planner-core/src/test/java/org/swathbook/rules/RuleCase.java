package org.swathbook.rules;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/**
 * One example of a rule's card, with the facts that it names.
 *
 * @param trips whether the rule is to object
 * @param example the words of the card
 * @param judged judges the facts anew
 */
record RuleCase(String rule, boolean trips, String example, Supplier<List<Finding>> judged) {

  static RuleCase trips(String rule, String example, Supplier<Findings> judged) {
    return new RuleCase(rule, true, example, () -> judged.get().sorted());
  }

  static RuleCase silent(String rule, String example, Supplier<Findings> judged) {
    return new RuleCase(rule, false, example, () -> judged.get().sorted());
  }

  /** What the rule itself says. */
  List<Finding> ofRule() {
    return judged.get().stream().filter(f -> f.rule().value().equals(rule)).toList();
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s %s: %s", rule, trips ? "trips" : "is silent", example);
  }
}
