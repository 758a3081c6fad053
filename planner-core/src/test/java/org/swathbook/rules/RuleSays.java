package org.swathbook.rules;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.check.Judgement;

/** All that one rule says and asks of a tank or a program, one line for each. */
final class RuleSays {
  private RuleSays() {}

  static List<String> of(String rule, Judgement judged) {
    return of(rule, judged.findings(), judged.asks());
  }

  static List<String> of(String rule, Findings found) {
    return of(rule, found.sorted(), found.sortedAsks());
  }

  /**
   * {@code block: message [value met; limit] remedy}, then {@code ask: what [where]}; a part that
   * is empty is left out.
   */
  private static List<String> of(String rule, List<Finding> findings, List<Ask> asks) {
    List<String> out = new ArrayList<>();
    for (Finding f : findings) {
      if (f.rule().value().equals(rule)) {
        String numbers = f.actual().isEmpty() ? "" : " [" + f.actual() + "; " + f.limit() + "]";
        String remedy = f.remedy().isEmpty() ? "" : " " + f.remedy();
        out.add(f.severity().word() + ": " + f.message() + numbers + remedy);
      }
    }
    for (Ask a : asks) {
      if (a.rule().value().equals(rule)) {
        out.add("ask: " + a.what() + " [" + a.where() + "]");
      }
    }
    return out;
  }
}
