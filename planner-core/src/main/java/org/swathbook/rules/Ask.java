package org.swathbook.rules;

import org.jspecify.annotations.Nullable;

/**
 * Something that matters here and is not known: the rule that needs it, what to look up and where.
 */
public record Ask(RuleId rule, String what, String where, About about) {

  // Written out, as in every key that is hashed at a start: see RuleId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Ask o
        && rule.equals(o.rule)
        && what.equals(o.what)
        && where.equals(o.where)
        && about.equals(o.about);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * rule.hashCode() + what.hashCode()) + about.hashCode();
  }
}
