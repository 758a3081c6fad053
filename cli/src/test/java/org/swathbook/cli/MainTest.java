package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.cli.terminal.ExitCode;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class MainTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final CommandLine root =
      Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true));

  @Test
  void helpIsAResult() {
    assertThat(Main.run(root, "--help")).isEqualTo(ExitCode.DONE);
    assertThat(out.toString()).startsWith("Usage: swathbook ").contains("The label is the law.");
    assertThat(err.toString()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "--hepl, the nearest is --help",
    "chekc, chekc",
    "--debug=perhaps, perhaps",
    "'--two\nlines', '--two lines'"
  })
  void aWrongCallIsOneLineOnTheErrorStreamAndNoResult(String arg, String told) {
    assertThat(Main.run(root, arg)).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString().lines())
        .singleElement()
        .asString()
        .startsWith("swathbook: ")
        .contains(told)
        .endsWith("; see 'swathbook --help'");
  }

  @Test
  void aMissingCommandIsAWrongCall() {
    assertThat(Main.run(root)).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(err.toString().strip())
        .isEqualTo("swathbook: a command is missing; see 'swathbook --help'");
  }

  @Test
  void anInternalErrorIsOneLine() {
    root.addSubcommand(new Failing());
    assertThat(Main.run(root, "fail")).isEqualTo(ExitCode.OUR_FAULT);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString().strip())
        .isEqualTo(
            "swathbook: internal error, IllegalStateException (two lines); --debug shows where");
  }

  @Test
  void debugShowsWhere() {
    root.addSubcommand(new Failing());
    assertThat(Main.run(root, "fail", "--debug")).isEqualTo(ExitCode.OUR_FAULT);
    assertThat(err.toString()).contains("at org.swathbook.cli.MainTest$Failing.run(");
  }

  @Test
  void exhaustedStackIsAnInternalErrorToo() {
    root.addSubcommand(new Exhausting());
    assertThat(Main.run(root, "exhaust")).isEqualTo(ExitCode.OUR_FAULT);
    assertThat(err.toString().strip())
        .isEqualTo("swathbook: internal error, StackOverflowError; --debug shows where");
  }

  @Command(name = "fail")
  static final class Failing implements Runnable {
    @Override
    public void run() {
      throw new IllegalStateException("two\n lines");
    }
  }

  @Command(name = "exhaust")
  static final class Exhausting implements Runnable {
    @Override
    public void run() {
      throw new StackOverflowError();
    }
  }
}
