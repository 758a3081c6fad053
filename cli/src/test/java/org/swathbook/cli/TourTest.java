package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What the first read-me shows of the demo book is what the program prints of it. Each block names
 * the call and the lines at which it begins and ends, the last not among them.
 */
class TourTest {
  private static final Path ROOT = ProgramProcess.CLI.resolve("..").normalize();
  private static final Path README = ROOT.resolve("README.md");
  private static final Pattern SHOWN =
      Pattern.compile(
          "(<!-- shown: ([^\n\"]+), from \"([^\"]+)\" to \"([^\"]+)\" -->\n```\n)(.*?)(```\n)",
          Pattern.DOTALL);

  private final Map<String, List<String>> printed = new HashMap<>();

  /** A stale block is written anew; the test fails once all the same. */
  @Test
  void theReadMeShowsWhatIsPrinted() throws IOException {
    String readme = Files.readString(README, UTF_8);
    Matcher shown = SHOWN.matcher(readme);
    StringBuilder fresh = new StringBuilder();
    int blocks = 0;
    while (shown.find()) {
      blocks++;
      String lines = lines(shown.group(2), shown.group(3), shown.group(4));
      shown.appendReplacement(
          fresh, Matcher.quoteReplacement(shown.group(1) + lines + shown.group(6)));
    }
    shown.appendTail(fresh);
    assertThat(blocks).isGreaterThanOrEqualTo(4);
    if (!fresh.toString().equals(readme)) {
      Files.writeString(README, fresh, UTF_8);
    }
    assertThat(readme)
        .as("README.md was stale and is written anew; commit it")
        .isEqualTo(fresh.toString());
    Goldens.check(
        "demo/plan.txt", String.join("\n", printed("plan ND-1 --today 2027-03-01")) + "\n");
  }

  private String lines(String call, String from, String to) {
    List<String> all = printed(call);
    int begin = first(all, 0, from);
    List<String> some = new ArrayList<>(all.subList(begin, first(all, begin + 1, to)));
    while (some.get(some.size() - 1).replace("-", "").isBlank()) {
      some.remove(some.size() - 1);
    }
    return String.join("\n", some) + "\n";
  }

  private static int first(List<String> lines, int after, String start) {
    for (int i = after; i < lines.size(); i++) {
      if (lines.get(i).strip().startsWith(start)) {
        return i;
      }
    }
    throw new AssertionError("no line starts with '" + start + "'");
  }

  private List<String> printed(String call) {
    return printed.computeIfAbsent(
        call,
        c -> {
          List<String> args = new ArrayList<>(List.of(c.split(" ")));
          args.addAll(List.of("--book", ROOT.resolve("demo-data").toString()));
          return Called.with(args.toArray(String[]::new)).out().lines().toList();
        });
  }
}
