package org.swathbook.rules;

/**
 * The words of a finding.
 *
 * @param message what is wrong, one or two sentences with the numbers
 * @param limit the limit alone, empty when there is none to name
 * @param actual the value met
 * @param source whose limit it is
 * @param remedy what would clear it, empty when nothing is known to
 */
public record Text(String message, String limit, String actual, String source, String remedy) {

  /** A message with the source of what it holds against the program. */
  public static Text of(String message, String source) {
    return new Text(message, "", "", source, "");
  }

  public Text compared(String actual, String limit) {
    return new Text(message, limit, actual, source, remedy);
  }

  public Text cleared(String remedy) {
    return new Text(message, limit, actual, source, remedy);
  }
}
