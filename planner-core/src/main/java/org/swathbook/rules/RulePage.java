package org.swathbook.rules;

import java.util.List;

/** What the rule book prints of a rule. */
public record RulePage(
    RuleId id,
    String scope,
    Severity severity,
    String question,
    String trigger,
    List<String> sources,
    String trips,
    String silent) {

  public RulePage {
    sources = List.copyOf(sources);
  }

  static RulePage of(Rule rule) {
    RuleCard c = rule.card();
    return new RulePage(
        c.id(),
        rule.scope(),
        c.severity(),
        c.question(),
        c.trigger(),
        c.sources(),
        c.trips(),
        c.silent());
  }
}
