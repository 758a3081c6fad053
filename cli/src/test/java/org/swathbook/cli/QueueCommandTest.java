package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookLoader;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.check.ProgramJudge;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;

/** Whole calls of {@code plan --queue}. */
class QueueCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String LAYERS = "nd-1-two-layers";

  @TempDir Path dir;
  private Path book;

  @BeforeEach
  void makeTheBook() throws IOException {
    book = SmallBook.of(dir.resolve("book"), "ND-1", "ND-2");
    SmallBook.copyProgram(book, LAYERS + ".yaml");
  }

  private Called on(String today, String... more) {
    List<String> args = new ArrayList<>(List.of("plan", "--queue"));
    args.addAll(List.of(more));
    args.addAll(List.of("--book", book.toString(), "--today", today));
    return Called.with(args.toArray(String[]::new));
  }

  private JsonNode queue(String today) throws IOException {
    Called called = on(today, "--json");
    assertThat(called.code()).as(called.err()).isZero();
    return JSON.readTree(called.out()).get("queue");
  }

  private void sprayed() throws IOException {
    SmallBook.append(
        book,
        "applications.csv",
        "T-1,1,,2027-05-12,08:00,ND-1,2027,76.0,metribuzin-75wg,DEMO-1,8.11,oz weight/acre,M-1,"
            + "soybean,pre,AMAPA,Applicator One,DEMO-4101,5,NW,75,");
  }

  @Test
  void inWinterAllIsLater() throws IOException {
    JsonNode queue = queue("2027-03-01");
    assertThat(queue.findValuesAsText("state")).containsExactly("later", "later");
    assertThat(queue.get(0).get("cropStage").isNull()).isTrue();
    assertThat(on("2027-03-01").out()).contains("ND-2: no program in the book");
  }

  @Test
  void theJournalSaysWhatIsMade() throws IOException {
    sprayed();
    JsonNode queue = queue("2027-05-20");
    assertThat(queue.findValuesAsText("state")).containsExactly("later", "made");
    assertThat(queue.get(1).get("date").asText()).isEqualTo("2027-05-12");
    assertThat(queue.get(1).get("pass").asInt()).isEqualTo(1);
  }

  /** A soil product over soybean that is up is blocked; two weeks late it is missed, not before. */
  @Test
  void whatIsLateIsLookedAtForTwoWeeks() throws IOException {
    assertThat(queue("2027-05-25").get(0).get("state").asText()).isEqualTo("blocked today");
    assertThat(queue("2027-05-26").findValuesAsText("state")).containsExactly("missed", "later");
  }

  /** On its last day nothing stands against a pass that is not named; on the next day it does. */
  @Test
  void theLastDayIsTheOneBeforeSomethingNewStandsAgainstIt() throws IOException {
    sprayed();
    JsonNode first = queue("2027-06-01").get(0);
    assertThat(first.get("state").asText()).isEqualTo("closes this week");
    LocalDate last = LocalDate.parse(first.get("lastDay").asText());
    String rule = first.get("findings").get(0).get("rule").asText();
    String about = first.get("findings").get(0).get("about").path("ingredient").asText();
    assertThat(against(last.plusDays(1))).contains(rule + " " + about);
    assertThat(against(last)).doesNotContain(rule + " " + about);
    // Told of on that day as the last one.
    assertThat(on(last.toString()).out()).contains("LAST DAY TODAY");
  }

  @Test
  void heightsAreOfTheShareThatTheHouseNames() throws IOException {
    sprayed();
    assertThat(onOneLine("2027-06-01")).contains(" in, 90 % to ");
    Path yaml = book.resolve("book.yaml");
    String house = Files.readString(yaml);
    assertThat(house).contains("sizePercentile: 90 %");
    Files.writeString(yaml, house.replace("sizePercentile: 90 %", "sizePercentile: 75 %"));
    assertThat(onOneLine("2027-06-01")).contains(" in, 75 % to ").doesNotContain("90 % to");
  }

  private String onOneLine(String today) {
    return on(today).out().replaceAll("\\s+", " ");
  }

  /** What the rules warn of when the second pass comes on a day. */
  private List<String> against(LocalDate day) {
    LocalDate today = LocalDate.of(2027, 6, 1);
    Book loaded = new BookLoader().load(book);
    BookPaths paths = new BookPaths(book);
    Program written = ProgramReader.read(paths.find(BookPaths.Kind.PROGRAM, LAYERS), paths, loaded);
    Field field = loaded.findField("ND-1").orElseThrow();
    TraceSet traces = TraceBuilder.build(loaded, field, today);
    Pass made = SeasonSoFar.of(loaded, field, today).made().get(0);
    Program moved =
        new Program(
            written.name(),
            written.field(),
            List.of(made, new Pass(new Anchor.OnDate(day), written.passes().get(1).mix())));
    SeasonOutcome outcome = SeasonWalk.walk(loaded, traces, moved);
    return ProgramJudge.judge(loaded, traces, outcome, today).findings().stream()
        .filter(f -> !f.severity().word().equals("note") && !f.severity().word().equals("ask"))
        .filter(f -> f.about().pass().isPresent() && f.about().pass().getAsInt() == 1)
        .map(
            f ->
                f.rule()
                    + " "
                    + f.about()
                        .ingredient()
                        .map(i -> loaded.catalog().ingredient(i).name())
                        .orElse(""))
        .toList();
  }

  @Test
  void aForecastGivesTheOpenHours() throws IOException {
    sprayed();
    StringBuilder rows = new StringBuilder("time,temp_f,rh_pct,wind_mph,gust_mph,from,rain_in\n");
    for (int day = 1; day <= 5; day++) {
      for (int hour = 0; hour < 24; hour++) {
        rows.append(
            String.format(
                Locale.ROOT,
                "2027-06-%02dT%02d:00,74,55,%d,%d,W,0%n",
                day,
                hour,
                day == 1 ? 18 : 6,
                day == 1 ? 20 : 8));
      }
    }
    Files.writeString(book.resolve("weather/sedge-fork-hourly.csv"), rows.toString());
    JsonNode hours = queue("2027-06-01").get(0).get("openHours");
    assertThat(hours.isNull()).isFalse();
    for (JsonNode h : hours) {
      assertThat(h.get("from").asText()).isGreaterThanOrEqualTo("2027-06-02");
    }
  }

  @Test
  void thePageSaysWhatTheTextSays() throws IOException {
    sprayed();
    Path page = dir.resolve("queue.html");
    Called called = on("2027-06-01", "--html", page.toString());
    assertThat(called.out()).contains("Written: ");
    assertThat(Files.readString(page))
        .contains("The season today", "Closes within 7 days", "The label is the law.");
    assertThat(on("2027-06-01").out().lines()).allMatch(l -> l.length() <= 100);
  }

  @Test
  void itPlansNothing() {
    for (String[] more :
        List.of(
            new String[] {"--save"},
            new String[] {"--without", "dicamba"},
            new String[] {"--keep", LAYERS},
            new String[] {"--handout", "x.html"})) {
      assertThat(on("2027-06-01", more).code()).as(more[0]).isEqualTo(ExitCode.WRONG_INPUT);
    }
  }
}
