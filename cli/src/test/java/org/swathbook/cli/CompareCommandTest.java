package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** Whole calls of {@code plan --compare}. */
class CompareCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String LAYERS = "nd-1-two-layers";

  @TempDir static Path dir;
  private static Path book;
  private static JsonNode three;

  @BeforeAll
  static void compareOnce() throws IOException {
    book = SmallBook.of(dir.resolve("book"), "ND-1", "ND-2");
    SmallBook.copyProgram(book, LAYERS + ".yaml");
    Called json =
        call("ND-1", "--compare", LAYERS, "best", "last-year", "--effort", "quick", "--json");
    assertThat(json.code()).as(json.err()).isEqualTo(ExitCode.DONE);
    three = JSON.readTree(json.out()).get("fields").get(0).get("compare");
  }

  private static Called call(String... args) {
    return Called.with("plan", book, args);
  }

  @Test
  void programsStandInTheOrderInWhichTheyWereNamed() {
    assertThat(three)
        .extracting(n -> n.get("asked").asText())
        .containsExactly(LAYERS, "best", "last-year");
    assertThat(three.get(0).get("givesUp").asText()).isEmpty();
    assertThat(three.get(0).get("gains").asText()).isEmpty();
    assertThat(three.get(1).get("givesUp").asText() + three.get(1).get("gains").asText())
        .isNotEmpty();
    assertThat(three.get(1).get("recommended").isBoolean()).isTrue();
    assertThat(three.get(1).get("notes").toString()).contains("found by a quick look");
  }

  /**
   * What {@code season} says of a program and {@code plan} of its best, the comparison says too.
   */
  @Test
  void theNumbersAreThoseOfTheOtherReports() throws IOException {
    JsonNode season =
        JSON.readTree(Called.with("season", book, LAYERS, "--json").out()).get("summary");
    season
        .fieldNames()
        .forEachRemaining(k -> assertThat(three.get(0).get(k)).isEqualTo(season.get(k)));
    JsonNode best =
        JSON.readTree(call("ND-1", "--effort", "quick", "--json").out())
            .get("fields")
            .get(0)
            .get("programs")
            .get(0);
    best.fieldNames()
        .forEachRemaining(
            k -> {
              if (!k.equals("givesUp")) {
                assertThat(three.get(1).get(k)).isEqualTo(best.get(k));
              }
            });
  }

  @Test
  void textFitsThePageHoweverManyThereAre() throws IOException {
    Path programs = book.resolve("programs");
    for (String name : new String[] {"a", "b", "c-with-a-name-that-is-longer-than-a-column"}) {
      Files.copy(programs.resolve(LAYERS + ".yaml"), programs.resolve(name + ".yaml"));
    }
    Called text =
        call("ND-1", "--compare", LAYERS, "a", "b", "c-with-a-name-that-is-longer-than-a-column");
    assertThat(text.code()).isEqualTo(ExitCode.DONE);
    assertThat(text.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    assertThat(text.out())
        .contains("4 c-with-a-name-t…")
        .contains("No difference in any of these figures.")
        .contains("net return, $/acre, mean (worst year)")
        .contains("The label is the law.");
    assertThat(text.out().split("Side by side", -1)).hasSize(3);
  }

  @Test
  void oneAloneIsHeldAgainstTheBest() throws IOException {
    Called one = call("nd-1", "--compare", LAYERS, "--json");
    assertThat(JSON.readTree(one.out()).get("fields").get(0).get("compare"))
        .extracting(n -> n.get("asked").asText())
        .containsExactly("best", LAYERS);
  }

  @Test
  void aBlockedProgramIsToldWithItsRule() throws IOException {
    Path file = book.resolve("programs/too-much.yaml");
    Files.writeString(
        file,
        Files.readString(book.resolve("programs/" + LAYERS + ".yaml"))
            .replace("metribuzin, rate: 0.38", "metribuzin, rate: 3.8"));
    Called called = call("ND-1", "--compare", "too-much", LAYERS);
    assertThat(called.code()).isEqualTo(ExitCode.DONE);
    assertThat(called.out())
        .contains("What blocks 1 too-much")
        .contains("BLOCK rate-above-use · pass 1 · metribuzin")
        .contains("not blocked by ");
    assertThat(call("ND-1", "--compare", "too-much", "programs/too-much.yaml").code())
        .isEqualTo(ExitCode.WRONG_INPUT);
  }

  /** The best keeps to it; of the others what they lack is told. */
  @Test
  void whatIsAskedIsHeldAgainstTheOthers() throws IOException {
    JsonNode compared =
        JSON.readTree(
                call(
                        "ND-1",
                        "--compare",
                        LAYERS,
                        "--budget",
                        "50",
                        "--without",
                        "metribuzin",
                        "--effort",
                        "quick",
                        "--json")
                    .out())
            .get("fields")
            .get(0)
            .get("compare");

    assertThat(compared.get(0).get("asked").asText()).isEqualTo("best");
    assertThat(compared.get(0).get("notes").toString()).doesNotContain("Against what is asked");
    assertThat(compared.get(1).get("notes"))
        .extracting(JsonNode::asText)
        .anyMatch(
            n ->
                n.equals(
                    "Against what is asked: metribuzin-75wg is in a pass and is to be left out."))
        .anyMatch(
            n ->
                n.matches(
                    "Against what is asked: It costs \\$[\\d.]+ an acre when every pass is made, and"
                        + " may cost \\$50\\.00\\."));
  }

  @Test
  void aRefusedBestIsSaidToBeMissing() throws IOException {
    Path refused = SmallBook.of(dir.resolve("refused"), "ND-2");
    SmallBook.refuseNd2(refused);
    Called called = Called.with("plan", refused, "ND-2", "--compare", "last-year", "best");
    assertThat(called.code()).isEqualTo(ExitCode.BLOCKED);
    assertThat(called.out())
        .contains("best is left out: the planner found no legal program; what stands against it:")
        .contains("next-crop-interval");
  }

  private static void isWrong(Called called, String what) {
    assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(called.out()).isEmpty();
    assertThat(called.err().lines()).singleElement().asString().contains(what);
  }

  @Test
  void callsThatMakeNoSenseAreToldInOneLine() throws IOException {
    isWrong(call("--compare", LAYERS, "best"), "programs of one field are compared");
    isWrong(call("ND-2", "--compare", LAYERS, "last-year"), "is one of ND-1");
    isWrong(call("ND-1", "--compare", "best"), "best alone has nothing to be held against");
    isWrong(call("ND-1", "--compare", LAYERS, "no-such"), "no program of this name");
    isWrong(call("ND-1", "--compare", LAYERS, "last-season"), "write one of: best, last-year, ");
    isWrong(
        call("ND-1", "--compare", LAYERS, "last-year", "--without", "glufosinate"),
        "concerns best alone");
    isWrong(
        call("ND-1", "--compare", LAYERS, "last-year", "--effort", "quick"),
        "--effort concerns best alone");
    isWrong(call("ND-1", "--save", "--compare", LAYERS, "best"), "--compare goes without --save");
    Path young = SmallBook.of(dir.resolve("young"), "ND-1");
    Files.delete(young.resolve("seasons.csv"));
    isWrong(
        Called.with("plan", young, "ND-1", "--compare", "last-year", "best"),
        "last-year: seasons.csv does not say when ND-1 was planted in 2025");
  }
}
