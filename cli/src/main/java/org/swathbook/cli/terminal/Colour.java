package org.swathbook.cli.terminal;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Colour on what must not be passed over, on a terminal alone. It adds nothing that the words do
 * not say: whoever sees none of it, or prefers none (NO_COLOR), misses nothing.
 */
public final class Colour {
  private static final String RED = "\u001b[1;31m";
  private static final String YELLOW = "\u001b[1;33m";
  private static final String CYAN = "\u001b[1;36m";
  private static final String BOLD = "\u001b[1m";
  private static final String END = "\u001b[0m";

  /** Severities at the head of a finding, verdicts, and words in capitals that warn. */
  private static final Pattern LOUD =
      Pattern.compile(
          "(?m)(?<=^ {2})(BLOCK|WARN|ASK)(?= )"
              + "|(?<=Verdict: )(blocked|caution|unverified|clear)"
              + "|\\b(BLOCKED|NOT KNOWN|NOT STATED|NO PRICE|MISSED|CLEAN OUT|LAST DAY TODAY|KEEP OUT)\\b");

  private static final Map<String, String> COLOURS =
      Map.of(
          "block",
          RED,
          "blocked",
          RED,
          "warn",
          YELLOW,
          "caution",
          YELLOW,
          "ask",
          CYAN,
          "unverified",
          CYAN);

  private Colour() {}

  /**
   * Whether a result may be coloured.
   *
   * @param terminal it goes to a terminal
   * @param environment NO_COLOR, whatever its value unless empty, forbids it (no-color.org), and so
   *     does a terminal that calls itself dumb
   */
  public static boolean wanted(boolean terminal, Map<String, String> environment) {
    return terminal
        && environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !environment.getOrDefault("TERM", "").equals("dumb");
  }

  /** The same text with colour; without its escapes it is the text as it was. */
  public static String of(String text) {
    return LOUD.matcher(text)
        .replaceAll(
            m ->
                Matcher.quoteReplacement(
                    COLOURS.getOrDefault(m.group().toLowerCase(Locale.ROOT), BOLD)
                        + m.group()
                        + END));
  }
}
