package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookLoader;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.catalog.ProductId;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Rate;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.WindowDays;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/** What a chart is drawn from agrees with the walk, on the demo book. */
class SeasonCalendarTest {
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");

  private final Book book = new BookLoader().load(DEMO);
  private final BookPaths paths = new BookPaths(DEMO);
  private final Program program =
      ProgramReader.read(paths.find(BookPaths.Kind.PROGRAM, "nd-1-two-layers"), paths, book);
  private final Field field = book.findField(program.field().value()).orElseThrow();
  private final TraceSet traces = TraceBuilder.build(book, field, LocalDate.of(2027, 3, 1));
  private final SeasonOutcome outcome = SeasonWalk.walk(book, traces, program);

  /** A pass is missed in exactly the years whose first day fit to spray lies outside its window. */
  @Test
  void windowsAreThoseThatDecideWhetherAPassIsMissed() {
    int missed = 0;
    for (PassOutcome p : outcome.passes()) {
      List<WindowDays> windows = WindowDays.of(book.house(), traces, p.mix(), 0, 1000);
      for (SeasonTrace t : traces.years()) {
        int first = t.firstSprayDay(t.dayOf(p.planned()));
        boolean open =
            windows.stream()
                .anyMatch(w -> w.year() == t.year() && w.fromDay() <= first && first <= w.toDay());
        assertThat(open)
            .as("pass %s in %s", p.index() + 1, t.year())
            .isEqualTo(!p.missedYears().contains(t.year()));
        missed += open ? 0 : 1;
      }
    }
    assertThat(missed)
        .as("years in which some pass is missed, so that both ways are seen")
        .isPositive();
  }

  @Test
  void emergenceOfTheWeeksIsThatOfTheSeason() {
    SeasonCalendar calendar = SeasonCalendar.of(book, traces, outcome);
    assertThat(calendar.weeds()).hasSize(traces.weeds().size());
    for (SeasonCalendar.Emergence e : calendar.weeds()) {
      assertThat(e.weeks().stream().mapToDouble(SeasonCalendar.Week::meanPct).sum())
          .isCloseTo(100, within(1e-6));
      assertThat(e.weeks())
          .allSatisfy(
              w -> {
                assertThat(w.lowPct()).isLessThanOrEqualTo(w.meanPct() + 1e-9);
                assertThat(w.highPct()).isGreaterThanOrEqualTo(w.meanPct() - 1e-9);
              });
    }
  }

  /** No stretch is open in more years than there are, none in no year, and none overlaps. */
  @Test
  void stretchesOfAWindowFollowEachOther() {
    for (SeasonCalendar.Window w : SeasonCalendar.of(book, traces, outcome).windows()) {
      LocalDate after = LocalDate.MIN;
      for (SeasonCalendar.Stretch s : w.open()) {
        assertThat(s.years()).isBetween(1, outcome.years().size());
        assertThat(s.from()).isAfter(after);
        assertThat(s.to()).isAfterOrEqualTo(s.from());
        after = s.to();
      }
    }
  }

  /** Amine before soybean waits 15 days to planting: the last open day is that much before it. */
  @Test
  void aDayTooNearToPlantingIsNotOpen() {
    Dose amine =
        Doses.ofProduct(
            book.catalog(),
            book.catalog().product(new ProductId("2-4-d-amine-3.8sl")),
            Rate.parse("1 pt/acre"));
    Program early =
        new Program(
            "early",
            field.id(),
            List.of(
                new Pass(
                    new Anchor.OnDate(field.plantDate().minusDays(25)), Mix.of(List.of(amine)))));
    SeasonCalendar.Window window =
        SeasonCalendar.of(book, traces, SeasonWalk.walk(book, traces, early)).windows().get(0);
    assertThat(window.open()).isNotEmpty();
    assertThat(window.open().get(window.open().size() - 1).to())
        .isEqualTo(field.plantDate().minusDays(15));
    assertThat(window.waits())
        .singleElement()
        .satisfies(w -> assertThat(w.band().days()).isEqualTo(15));
  }

  /** What the page is drawn from stands in the JSON of the same call, number for number. */
  @Test
  void theJsonHasWhatTheChartIsDrawnFrom() throws IOException {
    JsonNode json =
        new ObjectMapper()
            .readTree(Called.with("season", DEMO, "nd-1-two-layers", "--json").out())
            .get("calendar");
    SeasonCalendar calendar = SeasonCalendar.of(book, traces, outcome);
    assertThat(json.get("from").asText()).isEqualTo(calendar.from().toString());
    for (int i = 0; i < calendar.stages().size(); i++) {
      assertThat(json.get("stages").get(i).get("median").asText())
          .isEqualTo(calendar.stages().get(i).reached().median().toString());
    }
    for (int i = 0; i < calendar.weeds().size(); i++) {
      JsonNode weeks = json.get("emergence").get(i).get("weeks");
      List<SeasonCalendar.Week> all = calendar.weeds().get(i).weeks();
      assertThat(weeks).hasSameSizeAs(all);
      for (int w = 0; w < all.size(); w++) {
        assertThat(weeks.get(w).get("meanPct").asDouble())
            .isCloseTo(all.get(w).meanPct(), within(0.05 + 1e-9));
      }
    }
    for (int i = 0; i < calendar.windows().size(); i++) {
      JsonNode open = json.get("windows").get(i).get("open");
      List<SeasonCalendar.Stretch> all = calendar.windows().get(i).open();
      assertThat(open).hasSameSizeAs(all);
      assertThat(open.get(0).get("from").asText()).isEqualTo(all.get(0).from().toString());
      assertThat(open.get(0).get("years").asInt()).isEqualTo(all.get(0).years());
    }
  }
}
