package org.swathbook.rules;

import org.jspecify.annotations.Nullable;

/**
 * One objection.
 *
 * @param message what is wrong, in plain words with the numbers in the adviser's units
 * @param limit the limit, empty text when there is none to name
 * @param actual the value met
 * @param source whose limit it is
 * @param remedy what would clear it, empty text when nothing is known to
 */
public record Finding(
    RuleId rule,
    Severity severity,
    String message,
    String limit,
    String actual,
    String source,
    String remedy,
    About about) {

  // Written out, as in every key that is hashed at a start: see RuleId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Finding o
        && rule.equals(o.rule)
        && severity == o.severity
        && message.equals(o.message)
        && limit.equals(o.limit)
        && actual.equals(o.actual)
        && source.equals(o.source)
        && remedy.equals(o.remedy)
        && about.equals(o.about);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * rule.hashCode() + message.hashCode()) + about.hashCode();
  }

  Finding withPass(int index) {
    return new Finding(
        rule, severity, message, limit, actual, source, remedy, about.withPass(index));
  }

  Finding withoutPass() {
    return new Finding(rule, severity, message, limit, actual, source, remedy, about.withoutPass());
  }

  /** Which rule objects how hard and where, whatever its words and the pass. */
  public Finding place() {
    return new Finding(rule, severity, "", "", "", "", "", about.withoutPass());
  }
}
