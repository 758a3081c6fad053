package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
