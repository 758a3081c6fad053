package org.swathbook.rules;

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

  Finding withPass(int index) {
    return new Finding(
        rule, severity, message, limit, actual, source, remedy, about.withPass(index));
  }

  Finding withoutPass() {
    return new Finding(rule, severity, message, limit, actual, source, remedy, about.withoutPass());
  }
}
