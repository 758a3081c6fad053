package org.swathbook.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.source.Nearest;
import org.swathbook.source.ProblemsException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Turns what went wrong into one plain line on the error stream and an exit code. A class and no
 * lambdas: those of interfaces as old as the library's are in no archive, and made anew by every
 * start.
 */
final class Complaints
    implements CommandLine.IParameterExceptionHandler, CommandLine.IExecutionExceptionHandler {
  private final CommandLine root;

  /**
   * @param root the program
   */
  Complaints(CommandLine root) {
    this.root = root;
  }

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    return wrongCall(e);
  }

  @Override
  public int handleExecutionException(Exception e, CommandLine at, CommandLine.ParseResult parsed) {
    return e instanceof ProblemsException problems ? wrongInput(problems, root) : ourFault(e, root);
  }

  /**
   * A call that makes no sense: what is wrong, the nearest thing that would be right, where to
   * look.
   */
  private static int wrongCall(ParameterException e) {
    CommandLine at = e.getCommandLine();
    String name = at.getCommandSpec().qualifiedName();
    StringBuilder line = new StringBuilder(name).append(": ").append(oneLine(e.getMessage()));
    if (e instanceof UnmatchedArgumentException unmatched) {
      // What the library suggests may be anything; a word that is far off helps nobody.
      Nearest.of(unmatched.getUnmatched().get(0), unmatched.getSuggestions())
          .ifPresent(word -> line.append("; the nearest is ").append(oneLine(word)));
    }
    at.getErr().println(line.append("; see '").append(name).append(" --help'"));
    return ExitCode.WRONG_INPUT;
  }

  /** {@code ; the nearest is ND-1}, or the known words when none is near. */
  static String nearest(String typed, List<String> known) {
    return Nearest.of(typed, known)
        .map(word -> "; the nearest is " + word)
        .orElseGet(() -> "; there are " + String.join(", ", known));
  }

  /** Input that cannot be used: one line a problem. */
  private static int wrongInput(ProblemsException e, CommandLine root) {
    e.report().forEach(root.getErr()::println);
    return ExitCode.WRONG_INPUT;
  }

  /** A failure of the program itself: one line, and the stack trace only for those who ask. */
  static int ourFault(Throwable e, CommandLine root) {
    String what = e.getMessage() == null ? "" : " (" + oneLine(e.getMessage()) + ")";
    boolean debug = root.getCommand() instanceof Swathbook swathbook && swathbook.debug();
    root.getErr()
        .println(
            "swathbook: internal error, "
                + e.getClass().getSimpleName()
                + what
                + (debug ? "" : "; --debug shows where"));
    if (debug) {
      e.printStackTrace(root.getErr());
    }
    return ExitCode.OUR_FAULT;
  }

  private static String oneLine(@Nullable String text) {
    return text == null ? "" : text.strip().replaceAll("\\s*\\R\\s*", " ");
  }
}
