package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code escapes} on the demo book. */
class EscapesCommandTest {
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data").normalize();

  @TempDir Path folder;

  private static Called escapes(Path book, String today, String... more) {
    List<String> args = new ArrayList<>(List.of("escapes"));
    args.addAll(List.of(more));
    args.addAll(List.of("--book", book.toString(), "--today", today));
    return Called.with(args.toArray(String[]::new));
  }

  @Test
  void theDemoObservation() {
    Called text = escapes(DEMO, "2027-06-22", "nd-1-june");
    assertThat(text.err()).isEmpty();
    assertThat(text.code()).isZero();
    assertThat(text.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(100));
    // Suspicion is never a diagnosis.
    assertThat(text.out()).doesNotContain("is resistant").contains("Only a test can tell");
    Goldens.check("demo/escapes.txt", text.out());
    Goldens.check("demo/escapes.json", escapes(DEMO, "2027-06-22", "nd-1-june", "--json").out());
  }

  /** Once only, whatever is asked again; the rest of the file stays as it was. */
  @Test
  void aSuspicionIsAddedOnce() throws IOException {
    Path book = DemoBookCopy.into(folder);
    Path watch = book.resolve("watch.csv");
    String before = Files.readString(watch);
    Called first = escapes(book, "2027-06-22", "nd-1-june", "--watch");
    assertThat(first.err()).isEmpty();
    assertThat(first.out()).contains("watch.csv: added AMAPA and site 4");
    String after = Files.readString(watch);
    assertThat(after).startsWith(before).contains("ND-1,AMAPA,4,2027-06-22,");
    assertThat(escapes(book, "2027-06-23", "nd-1-june", "--watch").out())
        .contains("watch.csv: nothing to add");
    assertThat(watch).hasContent(after);
  }

  /** What was suspected in June is told, and does not count, in whatever is asked next. */
  @Test
  void whatIsWatchedNoLongerCounts() throws IOException {
    Path book = DemoBookCopy.into(folder);
    String note =
        "watch.csv: Palmer amaranth of ND-1 may resist site 4 (watched since 2027-06-22), so that"
            + " site does not count as effective on it; a test tells.";
    List<String[]> calls =
        List.of(
            new String[] {"check", "nd-1-june"},
            new String[] {"plan", "ND-1", "--max-passes", "1", "--effort", "quick"},
            new String[] {"audit", "ND-1"});
    for (String[] call : calls) {
      assertThat(words(book, call)).doesNotContain("watch.csv");
    }
    assertThat(words(book, calls.get(0)))
        .contains("meets one effective foliar site (site 4: 92 %, site 9: resisted)");
    Files.writeString(
        book.resolve("watch.csv"), "field,weed,site,since,reason\nND-1,AMAPA,4,2027-06-22,seen\n");
    for (String[] call : calls) {
      assertThat(words(book, call)).contains(note);
    }
    assertThat(words(book, calls.get(0)))
        .contains(
            "meets no effective foliar sites (site 4: suspected (watch list), site 9: resisted)")
        .contains(
            "alone, and a part of its plants resists site 9, and resistance to site 4 is suspected"
                + " (watch list), in how many plants is not")
        .contains("resisted: 9, suspected (watch list): 4")
        .doesNotContain("site 4: resisted");
    assertThat(words(book, calls.get(1)))
        .contains(
            "resists 2 and 9 (90 %); suspected (watch list): site 4, watched since 2027-06-22, not"
                + " tested");
    assertThat(words(book, new String[] {"plan", "QH-1", "--max-passes", "1", "--effort", "quick"}))
        .doesNotContain("watch.csv");
    // The look that noted it is read as before: what it noted is no second witness.
    assertThat(suspicion(book)).isEqualTo(suspicion(DEMO));
  }

  private static JsonNode suspicion(Path book) throws IOException {
    JsonNode root =
        new ObjectMapper().readTree(escapes(book, "2027-06-22", "nd-1-june", "--json").out());
    assertThat(root.get("watch")).isNotEmpty();
    return root.get("weeds");
  }

  private static String words(Path book, String... call) {
    List<String> args = new ArrayList<>(List.of(call));
    args.addAll(List.of("--book", book.toString(), "--today", "2027-03-01"));
    return Called.with(args.toArray(String[]::new)).out().replaceAll("\\s+", " ");
  }

  /** Contact sites from day 7, systemic ones from day 14: common practice, no source. */
  @Test
  void looksAreDueByTheJournal() throws IOException {
    Path book = DemoBookCopy.into(folder);
    assertThat(
            Called.with(
                    "record",
                    "--field",
                    "ND-2",
                    "--date",
                    "2027-06-10",
                    "glufosinate-ammonium 0.58 lb ai/acre",
                    "--book",
                    book.toString(),
                    "--today",
                    "2027-06-30")
                .err())
        .isEmpty();
    assertThat(due(book, "2027-06-16").get(0).get("when").textValue()).isEqualTo("not yet");
    JsonNode look = due(book, "2027-06-17").get(0);
    assertThat(look.get("field").textValue()).isEqualTo("ND-2");
    assertThat(look.get("when").textValue()).isEqualTo("due");
    assertThat(look.get("from").textValue()).isEqualTo("2027-06-17");
    assertThat(due(book, "2027-07-02").get(0).get("when").textValue()).isEqualTo("late");
    assertThat(escapes(book, "2027-06-17", "--due").out()).contains("ND-2");
    // A walk too early settles nothing; one that counted plants stands beside; one without settles.
    Path scouting = book.resolve("scouting.csv");
    String header = Files.readString(scouting);
    Files.writeString(scouting, header + "2027-06-14,ND-2,,AMBTR,,0 /m2,,,,\n");
    assertThat(due(book, "2027-06-18")).hasSize(1);
    assertThat(due(book, "2027-06-18").get(0).get("scouted")).isEmpty();
    Files.writeString(
        scouting,
        header + "2027-06-18,ND-2,,AMBTR,,0 /m2,,,,\n2027-06-18,ND-2,,ABUTH,,0.5 /m2,,,,\n");
    assertThat(due(book, "2027-06-17").get(0).get("scouted")).isEmpty();
    assertThat(due(book, "2027-06-18").get(0).get("scouted")).hasSize(2);
    assertThat(escapes(book, "2027-06-18", "--due").out())
        .contains("ND-2, scouted 18 Jun 2027: AMBTR 0 plants/m², ABUTH 0.5 plants/m²");
    Files.writeString(scouting, header + "2027-06-18,ND-2,,AMBTR,,0 /m2,,,,\n");
    assertThat(due(book, "2027-06-18")).isEmpty();
  }

  private static JsonNode due(Path book, String today) throws IOException {
    return new ObjectMapper().readTree(escapes(book, today, "--due", "--json").out()).get("due");
  }

  /** What the demo's observation holds, as answers, with some that cannot be read on the way. */
  private static final List<String> ANSWERS =
      List.of(
          "ND-9",
          "ND-1",
          "",
          "2026-06-08",
          "2027-06-08",
          "nope",
          "nd-1-june",
          "2027-06-01",
          "",
          "V55",
          "V5",
          "XXXXX",
          "palmer amaranth",
          "3 furlongs",
          "3 in",
          "100",
          "100 ft2",
          "14",
          "6",
          "5",
          "3",
          "-1",
          "",
          "1 in",
          "scattered",
          "maybe",
          "yes",
          "yes",
          "",
          "moist",
          "good",
          "as planned");

  private static Called asked(Path book, List<String> answers, String... more) {
    List<String> args = new ArrayList<>(List.of("escapes"));
    args.addAll(List.of(more));
    args.addAll(List.of("--book", book.toString(), "--today", "2027-06-22"));
    String text = String.join("\n", answers) + "\n";
    return Called.answering(text, args.toArray(String[]::new));
  }

  private static List<String> with(List<String> answers, String... more) {
    List<String> out = new ArrayList<>(answers);
    out.addAll(List.of(more));
    return out;
  }

  /** Answers give to the letter what the same observation gives as a file. */
  @Test
  void answersAreWorthAFile() {
    Called typed = asked(DEMO, with(ANSWERS, ""));
    assertThat(typed.code()).isZero();
    assertThat(typed.out()).isEqualTo(escapes(DEMO, "2027-06-22", "nd-1-june").out());
    assertThat(typed.err().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(102));
    assertThat(typed.err().replaceAll("\\s+", " "))
        .contains("did you mean 'ND-1'?")
        .contains("nothing follows without it")
        .contains("write a date from 2026-09-01 to 2027-10-31")
        .contains("write a date from 2027-06-08 on")
        .contains("did you mean 'V5'?")
        .contains("is no weed of ND-1; write one of: AMAPA, SETFA, ABUTH")
        .contains("write for example '3 in'")
        .contains("write for example '10 ft2'")
        .contains("from 0 to 1000000")
        .contains("empty: no other");
    Called json = asked(DEMO, with(ANSWERS, ""), "--json");
    assertThat(json.out()).isEqualTo(escapes(DEMO, "2027-06-22", "nd-1-june", "--json").out());
  }

  /** Wherever answers end nothing is printed or written, and it is said where. */
  @Test
  void answersThatEndEarly() throws IOException {
    Path book = DemoBookCopy.into(folder);
    for (int n = 0; n <= ANSWERS.size(); n += 4) {
      Called cut = asked(book, ANSWERS.subList(0, n), "--watch", "--save", "cut");
      assertThat(cut.code()).as("after %d", n).isEqualTo(n == ANSWERS.size() ? 0 : 2);
      if (n < ANSWERS.size()) {
        assertThat(cut.out()).isEmpty();
        assertThat(cut.err()).contains("the input ended at '");
        assertThat(book.resolve("observations/cut.yaml")).doesNotExist();
        assertThat(Files.readString(book.resolve("watch.csv"))).doesNotContain("ND-1,AMAPA");
      }
    }
    // Not one answer, as with a closed input.
    Called closed = escapes(DEMO, "2027-06-22");
    assertThat(closed.code()).isEqualTo(2);
    assertThat(closed.out()).isEmpty();
    assertThat(closed.err()).contains("the input ended at 'Which field?'");
    Called endless = asked(book, List.of("x".repeat(5000)));
    assertThat(endless.code()).isEqualTo(2);
    assertThat(endless.err()).contains("longer than 1000");
  }

  /** Kept answers are an observation like any other, and none is written over unasked. */
  @Test
  void answersAreKept() throws IOException {
    Path book = DemoBookCopy.into(folder);
    String same = escapes(book, "2027-06-22", "nd-1-june").out();
    Called offered = asked(book, with(ANSWERS, "nd-1-june", "look one"));
    assertThat(offered.err()).contains("as nd-1-2027-06-22").contains("of this name already");
    assertThat(offered.out()).contains("Kept as observations/look one.yaml.");
    assertThat(escapes(book, "2027-06-22", "look one").out()).isEqualTo(same);
    List<String> fewer = ANSWERS.subList(2, ANSWERS.size());
    Called saved = asked(book, fewer, "--field", "nd-1", "--save", "two");
    assertThat(saved.code()).isZero();
    assertThat(escapes(book, "2027-06-22", "two").out()).isEqualTo(same);
    String kept = Files.readString(book.resolve("observations/two.yaml"));
    Called again = asked(book, fewer, "--field", "nd-1", "--save", "two");
    assertThat(again.code()).isEqualTo(2);
    assertThat(again.err()).contains("of this name already").doesNotContain("question by question");
    Called forced = asked(book, fewer, "--field", "nd-1", "--save", "two", "--force");
    assertThat(forced.code()).isZero();
    assertThat(Files.readString(book.resolve("observations/two.yaml"))).isEqualTo(kept);
    Path outside = folder.resolve("elsewhere.yaml");
    assertThat(asked(book, with(ANSWERS, outside.toString())).code()).isZero();
    assertThat(escapes(book, "2027-06-22", outside.toString()).out()).isEqualTo(same);
  }

  /** Where the journal has the pass no mix is asked for, and its day is offered. */
  @Test
  void theJournalsPassIsOffered() throws IOException {
    Path book = DemoBookCopy.into(folder);
    assertThat(
            Called.with("record", "nd-1-june", "--book", book.toString(), "--today", "2027-06-20")
                .err())
        .isEmpty();
    Called look =
        asked(
            book,
            List.of(
                "ND-1", "", "", "", "AMAPA", "", "100 ft2", "9", "", "", "", "", "", "", "", "",
                ""));
    assertThat(look.err())
        .contains("in the journal: 2027-06-08; empty: 2027-06-08")
        .doesNotContain("Which mix");
    assertThat(look.code()).isZero();
    assertThat(look.out()).contains("by the journal").contains("Done: nothing more");
  }

  @Test
  void optionsThatDoNotGoTogether() {
    assertThat(escapes(DEMO, "2027-06-22", "nd-1-june", "--field", "ND-1").code()).isEqualTo(2);
    assertThat(escapes(DEMO, "2027-06-22", "--due", "--save", "x").code()).isEqualTo(2);
    assertThat(escapes(DEMO, "2027-06-22", "--force").code()).isEqualTo(2);
    assertThat(escapes(DEMO, "2027-06-22", "--field", "ND-9").err())
        .startsWith("--field")
        .contains("'ND-9'");
    assertThat(escapes(DEMO, "2027-06-22", "--field", "ND-1", "--date", "2021-06-08").err())
        .contains("not in the season");
  }

  @Test
  void aWrongCallWritesNothing() {
    assertThat(escapes(DEMO, "2027-06-22", "--due", "--watch").code()).isEqualTo(2);
    assertThat(escapes(DEMO, "2027-06-22", "no-such").err()).contains("no observation");
  }
}
