package org.swathbook.cli.terminal;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.util.List;
import java.util.function.Consumer;
import org.swathbook.cli.text.QuestionText;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.Mark;
import org.swathbook.source.ProblemsException;

/**
 * Asks for a line at a time: questions go to the error stream, so that the result stands alone on
 * the other one. What cannot be read is asked again with what would be right.
 */
public final class Answers {
  private static final int MOST_CHARS = 1000;
  private static final int MOST_OFFERED = 12;

  private final Reader in;
  private final PrintWriter out;

  public Answers(Reader in, PrintWriter out) {
    this.in = in;
    this.out = out;
  }

  public void say(String line) {
    out.print(QuestionText.of(line));
    out.flush();
  }

  /** Asks until something is answered that can be taken. */
  public void need(String question, String offered, Consumer<String> take) {
    while (true) {
      String line = line(question, question + " (" + offered + "; needed)");
      if (line.isEmpty()) {
        say("  nothing follows without it");
      } else if (taken(line, take)) {
        return;
      }
    }
  }

  /**
   * Asks until nothing is answered, or something that can be taken.
   *
   * @return whether something was taken
   */
  public boolean ask(String question, String offered, String ifEmpty, Consumer<String> take) {
    while (true) {
      String line = line(question, question + " (" + offered + "; empty: " + ifEmpty + ")");
      if (line.isEmpty()) {
        return false;
      }
      if (taken(line, take)) {
        return true;
      }
    }
  }

  private boolean taken(String line, Consumer<String> take) {
    try {
      take.accept(line);
      return true;
    } catch (MeasureException e) {
      say("  " + e.getMessage());
      return false;
    } catch (ProblemsException e) {
      e.report().forEach(r -> say("  " + r));
      return false;
    }
  }

  /** {@code ND-1, ND-2 and 498 more}. */
  public static String offered(List<String> words) {
    return words.size() <= MOST_OFFERED
        ? String.join(", ", words)
        : String.join(", ", words.subList(0, MOST_OFFERED))
            + " and "
            + (words.size() - MOST_OFFERED)
            + " more";
  }

  private String line(String question, String asked) {
    say(asked);
    out.print("> ");
    out.flush();
    StringBuilder line = new StringBuilder();
    try {
      int c = in.read();
      if (c < 0) {
        throw ended(question);
      }
      while (c >= 0 && c != '\n') {
        line.append((char) c);
        if (line.length() > MOST_CHARS) {
          throw ProblemsException.of(
              Mark.startOf("answers"),
              "the line is longer than " + MOST_CHARS + " characters, at '" + question + "'",
              "answer in a line");
        }
        c = in.read();
      }
    } catch (IOException e) {
      throw ended(question);
    }
    return line.toString().strip();
  }

  private ProblemsException ended(String question) {
    out.println();
    return ProblemsException.of(
        Mark.startOf("answers"),
        "the input ended at '" + question + "', and nothing was judged or written",
        "answer every question, with an empty line where you do not know, or name an observation,"
            + " as nd-1-june");
  }
}
