package org.swathbook.plan.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Money;
import org.swathbook.plan.DemoCopy;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.YearNet;

/** Programs side by side, and the program that the journal holds of an earlier season. */
class ComparedProgramTest {
  private static final LocalDate TODAY = LocalDate.parse("2027-03-01");

  @TempDir static Path folder;
  private static Book book;
  private static TraceSet traces;
  private static Program layers;

  @BeforeAll
  static void load() {
    Path dir = folder.resolve("book");
    book = new DemoCopy(dir).load();
    traces = traces(book, "ND-1");
    layers =
        ProgramReader.read(dir.resolve("programs/nd-1-two-layers.yaml"), new BookPaths(dir), book);
  }

  private static TraceSet traces(Book of, String field) {
    return TraceBuilder.build(of, of.findField(field).orElseThrow(), TODAY);
  }

  private static ComparedProgram.Named named(String asked, Program program) {
    return new ComparedProgram.Named(asked, false, false, program, List.of());
  }

  private static List<ComparedProgram> compared(Program... programs) {
    return ComparedProgram.of(
        book,
        traces,
        java.util.Arrays.stream(programs).map(p -> named(p.name(), p)).toList(),
        TODAY);
  }

  /** The first pass alone. */
  private static Program oneLayer() {
    return new Program("One layer", layers.field(), layers.passes().subList(0, 1));
  }

  @Test
  void everyProgramHasTheNumbersOfItsOwnWalk() {
    List<ComparedProgram> two = compared(layers, oneLayer());

    assertThat(two.get(0).judged().outcome()).isEqualTo(SeasonWalk.walk(book, traces, layers));
    assertThat(two.get(1).judged().outcome()).isEqualTo(SeasonWalk.walk(book, traces, oneLayer()));
  }

  @Test
  void aProgramAgainstItselfDiffersInNothing() {
    List<ComparedProgram> two = compared(layers, layers);

    assertThat(two.get(0).against().isNothing()).isTrue();
    assertThat(two.get(1).against().isNothing()).isTrue();
  }

  @Test
  void whatOneGivesUpTheOtherGains() {
    AgainstFirst less = compared(layers, oneLayer()).get(1).against();
    AgainstFirst more = compared(oneLayer(), layers).get(1).against();

    assertThat(less.gains())
        .anyMatch(s -> s.matches("costs \\$[0-9.]+ less"))
        .contains("1 pass fewer");
    assertThat(less.givesUp()).anyMatch(s -> s.startsWith("Palmer amaranth control "));
    assertThat(more.givesUp())
        .anyMatch(s -> s.matches("costs \\$[0-9.]+ more"))
        .contains("1 pass more");
    assertThat(more.gains()).hasSameSizeAs(less.givesUp());
    assertThat(more.givesUp()).hasSameSizeAs(less.gains());
  }

  @Test
  void netReturnOfTheYearsMeansTheNetReturn() {
    SeasonOutcome outcome = SeasonWalk.walk(book, traces, layers);
    double mean =
        outcome.years().stream()
            .map(y -> YearNet.of(book, outcome, y).orElseThrow())
            .mapToDouble(Money::dollars)
            .average()
            .orElseThrow();

    assertThat(mean).isCloseTo(outcome.net().orElseThrow().dollars(), within(0.02));
    assertThat(YearNet.worst(book, outcome).orElseThrow())
        .isLessThanOrEqualTo(outcome.net().orElseThrow());
  }

  /** ND-1 had soybean in 2025 and corn in 2026; this season it has soybean again. */
  @Test
  void theLastSeasonInTheSameCropComesFirst() {
    LastSeason last = LastSeason.of(book, traces);

    assertThat(last.season()).isEqualTo(2025);
    assertThat(last.notes().get(0)).contains("in soybean planted 9 May 2025");
    assertThat(last.program().passes())
        .extracting(Pass::at)
        .containsExactly(new Anchor.FromPlanting(1), new Anchor.FromPlanting(31));
    assertThat(last.program().passes().get(1).mix().doses())
        .isEqualTo(
            book.journal().of(layers.field()).stream()
                .filter(a -> a.date().equals(LocalDate.parse("2025-06-09")))
                .map(a -> a.dose())
                .toList());
  }

  /** What was sprayed was sprayed: outside of its window it is blocked, and yet it goes on. */
  @Test
  void whatWasSprayedOutsideItsWindowWorksAndIsBlocked() {
    Program late =
        new Program(
            "Late",
            layers.field(),
            List.of(new Pass(new Anchor.FromPlanting(5), layers.passes().get(0).mix())));
    ComparedProgram.Judged planned =
        ComparedProgram.of(
                book,
                traces,
                List.of(new ComparedProgram.Named("late", false, false, late, List.of())),
                TODAY)
            .get(0)
            .judged();
    ComparedProgram.Judged sprayed =
        ComparedProgram.of(
                book,
                traces,
                List.of(new ComparedProgram.Named("late", false, true, late, List.of())),
                TODAY)
            .get(0)
            .judged();

    assertThat(planned.outcome().passes().get(0).missedYears()).isNotEmpty();
    assertThat(sprayed.outcome().passes().get(0).missedYears()).isEmpty();
    assertThat(sprayed.outcome().passes().get(0).made()).isFalse();
    assertThat(sprayed.outcome().windowConfidencePct())
        .isEqualTo(planned.outcome().windowConfidencePct());
    assertThat(sprayed.outcome().cost().orElseThrow())
        .isGreaterThan(planned.outcome().cost().orElseThrow());
    assertThat(sprayed.judgement().findings())
        .anyMatch(
            f ->
                f.severity() == org.swathbook.rules.Severity.BLOCK
                    && f.rule().value().equals("stage-window"));
  }

  @Test
  void withoutTheSameCropTheLastSeasonOfAnyCropStandsIn(@TempDir Path dir) {
    Book changed =
        new DemoCopy(dir.resolve("book"))
            .change("seasons.csv", "ND-1,2025,soybean", "ND-1,2025,corn")
            .load();

    assertThat(LastSeason.of(changed, traces(changed, "ND-1")).season()).isEqualTo(2026);
  }

  @Test
  void withoutAPlantingDateItSaysWhatToFill(@TempDir Path dir) {
    Book changed =
        new DemoCopy(dir.resolve("book"))
            .change(
                "seasons.csv",
                "ND-1,2025,soybean,2-4-D;glufosinate;glyphosate,2025-05-09",
                "ND-1,2025,soybean,2-4-D;glufosinate;glyphosate,")
            .load();

    assertThatThrownBy(() -> LastSeason.of(changed, traces(changed, "ND-1")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("seasons.csv")
        .hasMessageContaining("plantDate");
  }
}
