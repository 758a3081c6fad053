package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** {@code season --html} on the demo book. */
class SeasonHtmlTest {
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");
  private static final String PROGRAM = "nd-1-two-layers";

  @TempDir Path folder;

  private String page() throws IOException {
    Path file = folder.resolve("season.html");
    Called called = Called.with("season", DEMO, PROGRAM, "--html", file.toString(), "--force");
    assertThat(called.complaints()).isEmpty();
    assertThat(called.code()).isEqualTo(ExitCode.DONE);
    assertThat(called.out()).isEqualTo("Written: " + file + "\n");
    return Files.readString(file);
  }

  @Test
  void thePageIsKept() throws IOException {
    String page = page();
    Goldens.check("demo/season.html", page);
    WrittenPage.standsByItself(page);
  }

  /** Figures of the page, its chart included, are those of the JSON. */
  @Test
  void thePageSaysWhatTheJsonSays() throws IOException {
    String page = page();
    String words = WrittenPage.words(page);
    JsonNode json =
        new ObjectMapper().readTree(Called.with("season", DEMO, PROGRAM, "--json").out());

    JsonNode summary = json.get("summary");
    for (String key : new String[] {"costPerAcre", "lossPerAcre", "netPerAcre"}) {
      assertThat(words).contains(summary.get(key).asText() + " $/acre");
    }
    for (JsonNode year : json.get("years")) {
      assertThat(words).contains(year.get("lossPerAcre").asText());
      year.get("controlPct").forEach(pct -> assertThat(words).contains(" " + pct.asText() + " "));
      for (JsonNode gap : year.get("gaps")) {
        if (gap.get("weed").asText().equals("AMAPA")) {
          assertThat(page)
              .contains("gap: " + gap.get("emergencePct").asText() + " % of the emergence");
        }
      }
    }
    for (JsonNode pass : summary.get("passes")) {
      JsonNode size = pass.get("weedHeightIn").get("AMAPA");
      assertThat(words).contains(" to " + size.get("p90").asText() + " in ");
      pass.get("mix").forEach(dose -> assertThat(words).contains(dose.get("product").asText()));
    }
    for (JsonNode finding : json.get("findings")) {
      if (!finding.get("rule").asText().equals("not-verified")) {
        assertThat(words).contains(finding.get("message").asText().replaceAll("\\s+", " "));
      }
    }
  }

  /** Where in a chart a number of a gap stands, or a pass; a number is as wide as its digits. */
  private static final Pattern NUMBER =
      Pattern.compile(
          "<text x=\"([\\d.]+)\" y=\"([\\d.]+)\"[^>]* class=\"share\"[^>]*>\\s*([\\d.]+)");

  private static final Pattern PASS =
      Pattern.compile(
          "<line x1=\"([\\d.]+)\" y1=\"([\\d.]+)\" x2=\"[\\d.]+\" y2=\"([\\d.]+)\" class=\"went\"");

  @Test
  void noNumberOfAGapTouchesAnotherOrAPass() throws IOException {
    int seen = 0;
    for (String chart : page().split("<svg")) {
      List<double[]> placed = new ArrayList<>();
      for (MatchResult m : NUMBER.matcher(chart).results().toList()) {
        double x = Double.parseDouble(m.group(1));
        double y = Double.parseDouble(m.group(2));
        double half = m.group(3).length() * 2.2;
        for (double[] other : placed) {
          assertThat(other[1] == y && Math.abs(x - other[0]) < half + other[2]).isFalse();
        }
        for (MatchResult p : PASS.matcher(chart).results().toList()) {
          boolean sameLine =
              Double.parseDouble(p.group(2)) < y && y < Double.parseDouble(p.group(3)) + 1;
          double gone = Math.abs(x - Double.parseDouble(p.group(1)));
          assertThat(sameLine && gone < half).as(m.group(3)).isFalse();
        }
        placed.add(new double[] {x, y, half});
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(10);
  }

  @Test
  void whatABookSaysIsEscaped() throws IOException {
    Path book = DemoBookCopy.into(folder.resolve("book"));
    Path fields = book.resolve("fields.csv");
    Files.writeString(
        fields, Files.readString(fields).replace("Long Eighty", "<script>alert(1)</script> & Co"));
    Path file = folder.resolve("season.html");
    Called called = Called.with("season", book, PROGRAM, "--html", file.toString());
    assertThat(called.complaints()).isEmpty();
    assertThat(Files.readString(file))
        .doesNotContain("<script")
        .contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; Co");
  }

  @Test
  void wrongCallsWriteNothing() throws IOException {
    Path file = folder.resolve("season.html");
    Files.writeString(file, "mine");
    Called refused = Called.with("season", DEMO, PROGRAM, "--html", file.toString());
    assertThat(refused.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(refused.out()).isEmpty();
    assertThat(refused.err()).contains("there is such a file already").contains("--force");
    assertThat(Files.readString(file)).isEqualTo("mine");

    Path other = folder.resolve("other.html");
    assertThat(Called.with("season", DEMO, PROGRAM, "--html", other.toString(), "--json").err())
        .contains("in place of --json");
    assertThat(Called.with("season", DEMO, PROGRAM, "--html", other.toString(), "--stress").err())
        .contains("--stress is told as text");
    assertThat(Called.with("season", DEMO, PROGRAM, "--force").err())
        .contains("--force goes with --html");
    assertThat(other).doesNotExist();
  }
}
