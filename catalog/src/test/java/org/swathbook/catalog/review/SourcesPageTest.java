package org.swathbook.catalog.review;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.file.CatalogLoader;

/** The read-me of this module tells how many values of each kind rest on what. */
class SourcesPageTest {
  private static final Path README = Path.of("README.md");
  private static final String BEGIN = "<!-- sources: written by SourcesPageTest -->\n";
  private static final String END = "<!-- end of sources -->\n";

  /** A stale table is written anew; the test fails once all the same. */
  @Test
  void theTableIsCurrent() throws IOException {
    String readme = Files.readString(README, UTF_8);
    int begin = readme.indexOf(BEGIN);
    int end = readme.indexOf(END);
    assertThat(begin).as("the marker " + BEGIN).isNotNegative();
    assertThat(end).as("the marker " + END).isGreaterThan(begin);
    String fresh = readme.substring(0, begin) + BEGIN + table() + readme.substring(end);
    if (!fresh.equals(readme)) {
      Files.writeString(README, fresh, UTF_8);
    }
    assertThat(readme).as("README.md was stale and is written anew; commit it").isEqualTo(fresh);
  }

  private static String table() {
    List<Provenance.Row> rows =
        Provenance.of(new CatalogLoader().written(true, Optional.empty(), "catalog"));
    StringBuilder out = new StringBuilder("\n| of | value |");
    for (Source.Kind k : Source.Kind.values()) {
      out.append(' ').append(k.words()).append(" |");
    }
    out.append("\n|---|---|").append("--:|".repeat(Source.Kind.values().length)).append('\n');
    rows.forEach(r -> out.append(line(r.group(), r.what(), counts(List.of(r)))));
    return out.append(line("all", "", counts(rows))).append('\n').toString();
  }

  private static Stream<Integer> counts(List<Provenance.Row> rows) {
    return Stream.of(Source.Kind.values()).map(k -> rows.stream().mapToInt(r -> r.count(k)).sum());
  }

  private static String line(String group, String what, Stream<Integer> counts) {
    return "| "
        + group
        + " | "
        + what
        + " | "
        + counts.map(String::valueOf).collect(Collectors.joining(" | "))
        + " |\n";
  }
}
