package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** Whole calls of {@code plan --keep}. */
class KeepCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String LAYERS = "nd-1-two-layers";
  private static final String SHORT = "glufosinate-2.34sl";

  @TempDir static Path dir;
  private static Path book;

  /** A book of its own, in which the kept program is saved. */
  private static Path fresh;

  private static final String[] SAVED = {
    "--keep", LAYERS, "--without", SHORT, "--effort", "quick", "--save", "--json"
  };
  private static Called saved;

  @BeforeAll
  static void makeTheBooks() throws IOException {
    book = SmallBook.of(dir.resolve("book"), "ND-1", "ND-2");
    SmallBook.copyProgram(book, LAYERS + ".yaml");
    fresh = SmallBook.of(dir.resolve("fresh"), "ND-1");
    SmallBook.copyProgram(fresh, LAYERS + ".yaml");
    saved = Called.with("plan", fresh, SAVED);
  }

  private static Called call(String... args) {
    return Called.with("plan", book, args);
  }

  @Test
  void theFirstProgramIsTheWrittenOneWithoutTheProductThatIsShort() throws IOException {
    assertThat(saved.code()).as(saved.err()).isEqualTo(ExitCode.DONE);
    JsonNode field = JSON.readTree(saved.out()).get("fields").get(0);
    assertThat(field.get("field").asText()).isEqualTo("ND-1");
    JsonNode keep = field.get("keep");
    assertThat(keep.get("needsNothing").asBoolean()).isFalse();
    assertThat(keep.get("effort").asText()).isEqualTo("quick");
    assertThat(keep.get("wanting").get(0).asText()).startsWith(SHORT);
    JsonNode first = field.get("programs").get(0);
    assertThat(first.get("thingsChanged").asInt()).isEqualTo(1);
    assertThat(first.get("changes").get(0).get("instead").asText()).isEqualTo(SHORT);
    assertThat(first.get("passes").toString()).doesNotContain(SHORT);
    assertThat(first.get("passes").get(0)).isEqualTo(keep.get("written").get("passes").get(0));
  }

  /** No label lets atrazine go on soybean; without that word nothing needs to change. */
  @Test
  void whatCannotBeHadIsSaidWithItsRuleAndWhatHelps() throws IOException {
    String[] asked = {"--keep", LAYERS, "--must-include", "atrazine", "--effort", "quick"};
    Called text = call(asked);

    assertThat(text.code()).isEqualTo(ExitCode.BLOCKED);
    assertThat(text.out().replaceAll("\\s+", " "))
        .contains("A new plan finds no program either. BLOCK crop-not-listed · atrazine")
        .containsPattern(
            "Without one of these limits alone it could be kept: --must-include atrazine, asked in"
                + " one: nothing then needs to change; net [\\d.]+, cost")
        .contains("As written net");
    JsonNode keep =
        JSON.readTree(
                call(Stream.concat(Stream.of(asked), Stream.of("--json")).toArray(String[]::new))
                    .out())
            .get("fields")
            .get(0)
            .get("keep");
    assertThat(keep.get("findings").get(0).get("rule").asText()).isEqualTo("crop-not-listed");
    assertThat(keep.get("without")).hasSize(1);
    assertThat(keep.get("without").get(0).get("thingsChanged").asInt()).isZero();
  }

  /** What {@code season} says of the written program is what the report holds changes against. */
  @Test
  void theFiguresOfTheWrittenProgramAreThoseOfTheSeason() throws IOException {
    JsonNode season =
        JSON.readTree(Called.with("season", fresh, LAYERS, "--json").out()).get("summary");
    JsonNode written = JSON.readTree(saved.out()).get("fields").get(0).get("keep").get("written");
    season.fieldNames().forEachRemaining(k -> assertThat(written.get(k)).isEqualTo(season.get(k)));
  }

  @Test
  void textSaysFirstWhatIsToChangeAndFitsThePage() {
    Called called = call("nd-1", "--keep", LAYERS, "--without", SHORT);
    assertThat(called.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    assertThat(called.out())
        .contains("ONE THING TO CHANGE: ")
        .contains("As written   ")
        .contains("Against what is asked: " + SHORT)
        .contains("Planned anew, to show what keeping costs")
        .contains("The label is the law.");
    assertThat(call("--keep", LAYERS, "--effort", "quick").out())
        .contains("NOTHING NEEDS TO CHANGE")
        .contains("Planned anew by a quick look, to show what keeping costs at least");
  }

  @Test
  void theKeptProgramIsSavedAndReadAgain() throws IOException {
    assertThat(saved.err()).contains("ND-1: saved as programs/nd-1.yaml");
    JsonNode kept = JSON.readTree(saved.out()).get("fields").get(0).get("programs").get(0);
    JsonNode season = JSON.readTree(Called.with("season", fresh, "nd-1", "--json").out());
    assertThat(season.get("summary").get("netPerAcre")).isEqualTo(kept.get("netPerAcre"));
    String file = Files.readString(fresh.resolve("programs/nd-1.yaml"));
    Called again = Called.with("plan", fresh, SAVED);
    assertThat(again.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(again.out()).isEmpty();
    assertThat(Files.readString(fresh.resolve("programs/nd-1.yaml"))).isEqualTo(file);
  }

  private static void isWrong(Called called, String what) {
    assertThat(called.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(called.out()).isEmpty();
    assertThat(called.err().lines()).singleElement().asString().contains(what);
  }

  @Test
  void callsThatMakeNoSenseAreToldInOneLine() {
    isWrong(call("ND-2", "--keep", LAYERS), "is one of ND-1; name that field or none");
    isWrong(call("--keep", "no-such"), "no program of this name");
    isWrong(call("--keep", LAYERS, "--timing"), "--keep goes without");
    isWrong(call("ND-1", "--keep", LAYERS, "--compare", LAYERS, "best"), "--compare goes without");
  }
}
