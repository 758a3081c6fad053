package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.measure.MeasureException;

class ProblemsTest {

  @Test
  void problemsAreSortedByFileLineAndColumnAndToldOnce() {
    Problems problems = new Problems();
    problems.add(new Mark("b.csv", 1, 1), "w", "r");
    problems.add(new Mark("a.csv", 10, 1), "w", "r");
    problems.add(new Mark("a.csv", 9, 12), "w", "r");
    problems.add(new Mark("a.csv", 9, 2), "w", "r");
    problems.add(new Mark("a.csv", 9, 2), "w", "r");
    assertThat(problems.report())
        .containsExactly(
            "a.csv:9:2: w; r", "a.csv:9:12: w; r", "a.csv:10:1: w; r", "b.csv:1:1: w; r");
  }

  @Test
  void aLongReportListsTwentyAndCountsTheRest() {
    Problems problems = new Problems();
    for (int i = 1; i <= 21; i++) {
      problems.add(new Mark("a.csv", i, 1), "w", "r");
    }
    assertThat(problems.report()).hasSize(21).last().isEqualTo("and 1 more problem");
    assertThat(problems.report(3)).hasSize(4).last().isEqualTo("and 18 more problems");
    assertThatThrownBy(problems::throwIfAny)
        .isInstanceOfSatisfying(
            ProblemsException.class,
            e -> {
              assertThat(e.problems()).hasSize(21);
              assertThat(e.report()).hasSize(21);
              assertThat(e.getMessage()).startsWith("a.csv:1:1: w; r");
            });
  }

  @Test
  void textOfAFileNeitherBreaksTheLineNorSteersATerminal() {
    Problem p = new Problem(Mark.startOf("a.csv"), "'a\nb\u001b[31m\u202e'", "r".repeat(1000));
    assertThat(p.toString()).hasLineCount(1).doesNotContain("\u001b", "\u202e");
    assertThat(p.toString().length()).isLessThan(400);
  }

  @Test
  void bothHalvesOfAMeasureErrorAreUsed() {
    Mark mark = Mark.startOf("a.csv");
    assertThat(Problem.of(mark, new MeasureException("wrong; right"), "4 in"))
        .isEqualTo(new Problem(mark, "wrong", "right"));
    assertThat(Problem.of(mark, new MeasureException("wrong"), "4 in"))
        .isEqualTo(new Problem(mark, "wrong", "write for example '4 in'"));
  }

  @ParameterizedTest
  @CsvSource({
    "densty, density",
    "DENSITY, density",
    "wede, weed",
    "feild, field",
    "x, ''",
    "acres, ''",
  })
  void theNearestWordIsFoundAndNoFarOne(String typed, String nearest) {
    List<String> known = List.of("field", "weed", "density", "plantDate");
    assertThat(Nearest.of(typed, known).orElse("")).isEqualTo(nearest);
  }

  @Test
  void withoutANearWordTheKnownOnesAreListed() {
    assertThat(Nearest.hint("zzz", List.of("corn", "wheat")))
        .isEqualTo("write one of: corn, wheat");
  }
}
