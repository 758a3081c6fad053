package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The read-me's section on the rule book is written from the cards. When it is stale, this test
 * writes it anew and fails once.
 */
class RuleBookPageTest {
  private static final Path README = Path.of("README.md");
  private static final String BEGIN = "<!-- rule book: written by RuleBookPageTest -->\n";
  private static final String END = "<!-- end of the rule book -->\n";

  @Test
  void theReadMeShowsTheRulesAsTheyAre() throws IOException {
    String readme = Files.readString(README, StandardCharsets.UTF_8);
    int begin = readme.indexOf(BEGIN);
    int end = readme.indexOf(END);
    assertThat(begin).as("the marker " + BEGIN).isNotNegative();
    assertThat(end).as("the marker " + END).isGreaterThan(begin);

    String fresh = readme.substring(0, begin) + BEGIN + section() + readme.substring(end);
    if (!fresh.equals(readme)) {
      Files.writeString(README, fresh, StandardCharsets.UTF_8);
    }

    assertThat(readme).as("README.md was stale and is written anew; commit it").isEqualTo(fresh);
  }

  private static String section() {
    StringBuilder out = new StringBuilder();
    out.append("\n| rule | scope | at worst | asks |\n|---|---|---|---|\n");
    for (RulePage p : RuleBook.pages()) {
      out.append("| [`" + p.id() + "`](#" + p.id() + ") | ")
          .append(p.scope() + " | " + p.severity().word() + " | " + p.question() + " |\n");
    }
    for (RulePage p : RuleBook.pages()) {
      out.append("\n#### " + p.id() + "\n\n");
      out.append(p.trigger() + "\n\n");
      out.append("- objects to: " + p.trips() + "\n");
      out.append("- lets pass: " + p.silent() + "\n");
      out.append("- source: " + String.join("; ", p.sources()) + "\n");
    }
    out.append("\n");
    return out.toString();
  }
}
