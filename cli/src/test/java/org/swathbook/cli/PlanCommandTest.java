package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** Whole calls of {@code plan}, and of {@code season} on what it saved. */
class PlanCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir static Path dir;
  private static Path book;
  private static Called text;
  private static Called json;

  /** ND-1 gets a program, ND-2 is refused for what was sprayed before. */
  @BeforeAll
  static void planOnce() throws IOException {
    book = SmallBook.of(dir.resolve("book"), "ND-1", "ND-2");
    SmallBook.refuseNd2(book);
    json = call("plan", "--json", "--threads", "2", "--save");
    text = call("plan", "--threads", "1");
  }

  private static Called call(String command, String... more) {
    return Called.with(command, book, more);
  }

  private static JsonNode field(int i) throws IOException {
    return JSON.readTree(json.out()).get("fields").get(i);
  }

  @Test
  void aPlanOfSeveralFieldsIsDoneThoughOneIsRefused() throws IOException {
    assertThat(json.code()).isEqualTo(ExitCode.DONE);
    assertThat(field(0).get("field").asText()).isEqualTo("ND-1");
    assertThat(field(0).get("programs")).isNotEmpty();
    assertThat(field(0).has("refusal")).isFalse();
    assertThat(field(1).get("field").asText()).isEqualTo("ND-2");
    assertThat(field(1).get("programs")).isEmpty();
    assertThat(field(1).get("refusal").get("rules"))
        .extracting(JsonNode::asText)
        .containsExactly("next-crop-interval");
  }

  @Test
  void aQuickLookSaysThatItIsOne() throws IOException {
    Called quick = call("plan", "ND-1", "--effort", "quick", "--max-passes", "2");
    assertThat(quick.code()).isEqualTo(ExitCode.DONE);
    assertThat(quick.out()).contains("This was a quick look");
    assertThat(text.out()).doesNotContain("quick look");
    assertThat(field(0).get("search").get("effort").asText()).isEqualTo("usual");
  }

  @Test
  void anEffortThatIsNoneIsRefused() {
    Called wrong = call("plan", "ND-1", "--effort", "most");
    assertThat(wrong.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(wrong.err()).contains("'most' is no effort; one of quick, usual, thorough");
    assertThat(call("plan", "--queue", "--effort", "quick").code()).isEqualTo(ExitCode.WRONG_INPUT);
  }

  @Test
  void textSaysWhichFieldIsRefusedAndFitsThePage() {
    assertThat(text.code()).isEqualTo(ExitCode.DONE);
    assertThat(text.out())
        .containsPattern("(?m)^ND-2 +corn +REFUSED")
        .contains("BLOCK next-crop-interval · fomesafen")
        .contains("The label is the law.");
    assertThat(text.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void theOneFieldNamedIsRefused() {
    Called one = call("plan", "nd-2");
    assertThat(one.code()).isEqualTo(ExitCode.BLOCKED);
    assertThat(one.out()).contains("REFUSED: ");
    assertThat(one.complaints()).isEmpty();
  }

  /** What stands against the field stands against whatever is asked about. */
  @Test
  void whyNotOfARefusedFieldPointsToWhatRefusesIt() {
    Called asked = call("plan", "nd-2", "--why-not", "glyphosate");
    assertThat(asked.code()).isEqualTo(ExitCode.BLOCKED);
    assertThat(asked.out().replaceAll("\\s+", " "))
        .contains(
            "Why not glyphosate? No legal program with it was found. Nothing can be planned for this"
                + " field, whatever is asked: see above.")
        .doesNotContain("No single limit");
  }

  @Test
  void saveSaysWhatItWroteAndWritesOverNothing() throws IOException {
    Path saved = book.resolve("programs/nd-1.yaml");
    assertThat(json.err().lines().filter(l -> !l.startsWith("planning ")))
        .containsExactly("ND-1: saved as programs/nd-1.yaml", "ND-2: refused, nothing to save");
    assertThat(book.resolve("programs/nd-2.yaml")).doesNotExist();
    byte[] before = Files.readAllBytes(saved);
    Called again = call("plan", "ND-1", "--save");
    assertThat(again.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(again.out()).isEmpty();
    assertThat(again.err())
        .startsWith("programs/nd-1.yaml:1:1: there is a program of this name already; ")
        .contains("--force");
    assertThat(saved).hasBinaryContent(before);
  }

  @Test
  void aSavedProgramWalksToThePlansOwnNumbers() throws IOException {
    ObjectNode planned = (ObjectNode) field(0).get("programs").get(0);
    Called season = call("season", "nd-1", "--json");
    JsonNode summary = JSON.readTree(season.out()).get("summary");
    planned.remove(List.of("recommended", "givesUp"));
    assertThat(summary).isEqualTo(planned);
  }

  @Test
  void aSavedProgramReadsAsInThePlan() {
    Called season = call("season", "nd-1");
    String passes = between(text.out(), "Pass 1  ", "Why each is there");
    assertThat(passes).contains("Results over 2 years").contains("Net return");
    assertThat(between(season.out(), "Pass 1  ", "Year by year")).isEqualTo(passes);
    assertThat(between(season.out(), "Verdict: ", "House rules: "))
        .isEqualTo(between(text.out(), "Verdict: ", "Other programs"));
    assertThat(season.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
  }

  private static String between(String text, String from, String to) {
    int start = text.indexOf(from);
    int end = text.indexOf(to, start);
    assertThat(start).as(from).isNotNegative();
    assertThat(end).as(to).isNotNegative();
    return text.substring(start, end);
  }

  /** The journal stands in the saved program's place for what is made, with the same numbers. */
  @Test
  void aPlanOfASeasonUnderWayWalksToItsOwnNumbers() throws IOException {
    Path begun = SmallBook.of(dir.resolve("begun"), "ND-1");
    SmallBook.append(
        begun,
        "applications.csv",
        "T-27-1,1,,2027-05-12,08:00,ND-1,2027,76.0,flumioxazin,DEMO-1,0.08,lb ai/acre,M-1,soybean,"
            + "pre,AMAPA,Applicator One,DEMO-4101,5,NW,75,");
    String[] book = {"--book", begun.toString(), "--today", "2027-05-26"};
    Called plan =
        Called.with("plan", "ND-1", "--save", "--json", book[0], book[1], book[2], book[3]);
    Called season = Called.with("season", "nd-1", "--json", book[0], book[1], book[2], book[3]);
    ObjectNode planned =
        (ObjectNode) JSON.readTree(plan.out()).get("fields").get(0).get("programs").get(0);
    planned.remove(List.of("recommended", "givesUp"));

    assertThat(planned.get("passes").get(0).get("made").asBoolean()).isTrue();
    assertThat(planned.get("passes").get(1).get("made").asBoolean()).isFalse();
    assertThat(JSON.readTree(season.out()).get("summary")).isEqualTo(planned);
    assertThat(JSON.readTree(season.out()).get("notes").toString())
        .contains("Made in ND-1 this season, by the journal: 2027-05-12 flumioxazin.");
    assertThat(Called.with("season", "nd-1", book[0], book[1], book[2], book[3]).out())
        .contains("MADE on this day, as the journal has it");
  }

  @Test
  void threadsChangeNoByte() {
    assertThat(call("plan", "--json", "--threads", "1").out()).isEqualTo(json.out());
  }

  @Test
  void timingIsToldOnlyWhenAsked() throws IOException {
    assertThat(field(1).get("search").has("millis")).isFalse();
    Called timed = call("plan", "ND-2", "--json", "--timing");
    assertThat(JSON.readTree(timed.out()).get("fields").get(0).get("search").get("millis").asLong())
        .isPositive();
  }
}
