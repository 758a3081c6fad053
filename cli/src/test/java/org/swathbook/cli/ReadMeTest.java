package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The read-me of this module shows the help and names the JSON keys as they are. */
class ReadMeTest {
  private static final Path README = ProgramProcess.CLI.resolve("README.md");
  private static final String BEGIN = "<!-- help: written by ReadMeTest -->\n";
  private static final String END = "<!-- end of help -->\n";
  private static final Pattern KEY = Pattern.compile("^\\| `([a-zA-Z]+\\.[a-zA-Z0-9.]+)` \\|");

  /** A stale help is written anew; the test fails once all the same. */
  @Test
  void helpIsAsPrinted() throws IOException {
    String readme = Files.readString(README, UTF_8);
    int begin = readme.indexOf(BEGIN);
    int end = readme.indexOf(END);
    assertThat(begin).as("the marker " + BEGIN).isNotNegative();
    assertThat(end).as("the marker " + END).isGreaterThan(begin);
    String fresh = readme.substring(0, begin) + BEGIN + help() + readme.substring(end);
    if (!fresh.equals(readme)) {
      Files.writeString(README, fresh, UTF_8);
    }
    assertThat(readme).as("README.md was stale and is written anew; commit it").isEqualTo(fresh);
  }

  private static String help() {
    StringBuilder out = new StringBuilder("\n```\n").append(Called.with("--help").out());
    CommandLine root =
        Main.commandLine(
            new PrintWriter(Writer.nullWriter()), new PrintWriter(Writer.nullWriter()));
    root.getSubcommands()
        .forEach(
            (name, command) -> {
              out.append("```\n\n```\n").append(Called.with(name, "--help").out());
              for (String below : command.getSubcommands().keySet()) {
                out.append("```\n\n```\n").append(Called.with(name, below, "--help").out());
              }
            });
    return out.append("```\n\n").toString();
  }

  @Test
  void everyJsonKeyIsNamedOnceAndNoneThatIsNotPrinted() throws IOException {
    List<String> named =
        Files.readAllLines(README, UTF_8).stream()
            .map(KEY::matcher)
            .filter(Matcher::find)
            .map(m -> m.group(1))
            .toList();
    assertThat(named).doesNotHaveDuplicates();
    assertThat(named)
        .containsExactlyInAnyOrderElementsOf(JsonPaths.of(SampleDocuments.byCommand()));
  }
}
