package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.PrintWriter;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The help of each command teaches by an example, and every example is a call that can be made. */
class HelpTest {
  private static final String EXAMPLE = "For example: ";
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");

  private static CommandLine root() {
    return Main.commandLine(
        new PrintWriter(Writer.nullWriter()), new PrintWriter(Writer.nullWriter()));
  }

  private static void collect(CommandLine command, List<CommandLine> out) {
    for (Map.Entry<String, CommandLine> e : command.getSubcommands().entrySet()) {
      out.add(e.getValue());
      collect(e.getValue(), out);
    }
  }

  private static List<CommandLine> commands() {
    List<CommandLine> out = new ArrayList<>();
    collect(root(), out);
    return out;
  }

  private static List<String> examples(CommandLine command) {
    List<String> out = new ArrayList<>();
    for (String line : command.getCommandSpec().usageMessage().description()) {
      if (line.startsWith(EXAMPLE)) {
        out.add(line.substring(EXAMPLE.length()));
      }
    }
    return out;
  }

  @Test
  void everyCommandHasAnExampleOfItself() {
    for (CommandLine c : commands()) {
      String name = c.getCommandSpec().qualifiedName(" ").replaceFirst("^swathbook ", "");
      assertThat(examples(c)).as(name).isNotEmpty().allMatch(e -> (e + " ").startsWith(name + " "));
    }
  }

  @Test
  void everyExampleCanBeCalled() {
    for (CommandLine c : commands()) {
      for (String example : examples(c)) {
        assertThatCode(() -> parse(example)).as(example).doesNotThrowAnyException();
      }
    }
  }

  /** Reads the words of a call as a shell would take them apart, and runs nothing. */
  static void parse(String call) {
    List<String> args = new ArrayList<>();
    Matcher m = WORD.matcher(call);
    while (m.find()) {
      args.add(m.group(1) != null ? m.group(1) : m.group(2) != null ? m.group(2) : m.group(3));
    }
    root().parseArgs(args.toArray(String[]::new));
  }
}
