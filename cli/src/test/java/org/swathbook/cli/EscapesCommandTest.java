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
            new String[] {"plan", "ND-1"},
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
        .contains("meets no effective foliar sites (site 4: resisted, site 9: resisted)");
    assertThat(words(book, new String[] {"plan", "QH-1"})).doesNotContain("watch.csv");
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
  }

  private static JsonNode due(Path book, String today) throws IOException {
    return new ObjectMapper().readTree(escapes(book, today, "--due", "--json").out()).get("due");
  }

  @Test
  void aWrongCallWritesNothing() {
    Called none = escapes(DEMO, "2027-06-22");
    assertThat(none.code()).isEqualTo(2);
    assertThat(none.out()).isEmpty();
    assertThat(none.err()).contains("name one observation");
    assertThat(escapes(DEMO, "2027-06-22", "--due", "--watch").code()).isEqualTo(2);
    assertThat(escapes(DEMO, "2027-06-22", "no-such").err()).contains("no observation");
  }
}
