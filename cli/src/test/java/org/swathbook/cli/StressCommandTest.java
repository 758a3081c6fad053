package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.swathbook.cli.terminal.ExitCode;

/** {@code season --stress} on the demo book's own program of two layers. */
class StressCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");
  private static final String PROGRAM = "nd-1-two-layers";

  private static Called text;
  private static Called json;
  private static JsonNode stress;

  @BeforeAll
  static void walkOnce() throws IOException {
    text = Called.with("season", DEMO, PROGRAM, "--stress");
    json = Called.with("season", DEMO, PROGRAM, "--stress", "--json");
    stress = JSON.readTree(json.out()).get("stress");
  }

  @Test
  void textIsAsKeptAndEndsWithTheCautions() {
    String out = text.out();
    int from = out.indexOf("What if the season goes wrong");
    int to = out.indexOf("How to read the figures");
    assertThat(from).isPositive();
    assertThat(out.substring(to)).contains("The label is the law.");
    assertThat(out.lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    Goldens.check("demo/season-stress.txt", out.substring(from, to));
  }

  @Test
  void jsonIsAsKept() throws IOException {
    Goldens.check(
        "demo/season-stress.json",
        JSON.writerWithDefaultPrettyPrinter().writeValueAsString(stress).replace("\r\n", "\n")
            + "\n");
  }

  @Test
  void theExitCodeIsThatOfThePlainProgram() {
    assertThat(text.code()).isEqualTo(ExitCode.DONE);
    assertThat(json.code()).isEqualTo(ExitCode.DONE);
  }

  @Test
  void withoutTheOptionNothingIsAsked() throws IOException {
    Called plain = Called.with("season", DEMO, PROGRAM, "--json");
    JsonNode document = JSON.readTree(plain.out());
    assertThat(document.has("stress")).isFalse();
    assertThat(JSON.readTree(json.out()).get("summary")).isEqualTo(document.get("summary"));
    assertThat(Called.with("season", DEMO, PROGRAM).out()).doesNotContain("What if");
  }

  /** A remedy is legal, and what cannot be had is not in it. */
  @Test
  void whatHelpsIsLegal() {
    Set<String> seen = new HashSet<>();
    for (JsonNode c : stress) {
      for (JsonNode r : c.get("remedies")) {
        seen.add(r.get("kind").asText());
        assertThat(r.get("verdict").asText()).isNotEqualTo("blocked");
        assertThat(r.get("pass").asText().compareTo(c.get("knownFrom").asText())).isNotNegative();
        if (c.get("name").asText().equals("missing-product")) {
          assertThat(r.get("products").findValuesAsText("product"))
              .doesNotContain(c.get("of").asText());
        }
      }
    }
    assertThat(seen).hasSizeGreaterThan(1);
  }
}
