package org.swathbook.source;

import java.util.Comparator;
import org.swathbook.measure.MeasureException;

/**
 * Something wrong in a file, said in one line: where, what, and what would be right.
 *
 * @param right what would be right; never empty, for a complaint that leaves its reader helpless is
 *     none
 */
public record Problem(Mark mark, String what, String right) implements Comparable<Problem> {

  private static final int MOST_CHARACTERS = 300;
  private static final Comparator<Problem> ORDER =
      Comparator.comparing(Problem::mark)
          .thenComparing(Problem::what)
          .thenComparing(Problem::right);

  public Problem {
    what = oneLine(what);
    right = oneLine(right);
    if (what.isEmpty() || right.isEmpty()) {
      throw new IllegalArgumentException("a problem says what is wrong and what would be right");
    }
  }

  /**
   * The problem of a text that is no quantity of the wanted kind. The message of the error holds
   * both halves, or else the example tells what would be right.
   */
  public static Problem of(Mark mark, MeasureException error, String example) {
    String message = String.valueOf(error.getMessage());
    int split = message.indexOf("; ");
    return split > 0 && split + 2 < message.length()
        ? new Problem(mark, message.substring(0, split), message.substring(split + 2))
        : new Problem(mark, message, "write for example '" + example + "'");
  }

  /** Control characters of a file must neither break the line nor steer a terminal. */
  private static String oneLine(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .limit(MOST_CHARACTERS)
        .forEach(
            c -> {
              int type = Character.getType(c);
              boolean invisible =
                  type == Character.CONTROL
                      || type == Character.FORMAT
                      || type == Character.LINE_SEPARATOR
                      || type == Character.PARAGRAPH_SEPARATOR
                      || type == Character.SURROGATE;
              out.appendCodePoint(invisible ? '\uFFFD' : c);
            });
    if (text.codePointCount(0, text.length()) > MOST_CHARACTERS) {
      out.append('…');
    }
    return out.toString().strip();
  }

  @Override
  public int compareTo(Problem other) {
    return ORDER.compare(this, other);
  }

  /** {@code weeds.csv:4:7: 'abc' does not start with a number; write for example '80 /m2'}. */
  @Override
  public String toString() {
    return mark + ": " + what + "; " + right;
  }
}
