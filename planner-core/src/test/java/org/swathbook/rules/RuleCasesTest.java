package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every example of every card, judged. */
class RuleCasesTest {

  static List<RuleCase> all() {
    return Stream.of(
            LabelCases.all(),
            TimingCases.all(),
            PairCases.all(),
            TankCases.all(),
            JobCases.all(),
            DayCases.all(),
            SeasonCases.all())
        .flatMap(List::stream)
        .toList();
  }

  static Stream<RuleCase> tripping() {
    return all().stream().filter(RuleCase::trips);
  }

  static Stream<RuleCase> silent() {
    return all().stream().filter(c -> !c.trips());
  }

  @ParameterizedTest
  @MethodSource("tripping")
  void tripsWithTheSeverityOfItsCard(RuleCase c) {
    Severity gravest = RuleBook.find(c.rule()).orElseThrow().card().severity();

    assertThat(c.ofRule()).extracting(Finding::severity).contains(gravest);
  }

  @ParameterizedTest
  @MethodSource("silent")
  void isSilent(RuleCase c) {
    boolean notes = RuleBook.find(c.rule()).orElseThrow().card().severity() == Severity.NOTE;

    assertThat(c.ofRule()).filteredOn(f -> notes || f.severity() != Severity.NOTE).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("tripping")
  void itsWordsAreWhole(RuleCase c) {
    for (Finding f : c.judged().get()) {
      assertThat(f.message())
          .endsWith(".")
          .doesNotContain("null", "{", "}", "  ", "Optional", "NaN", "..")
          .matches("(?s)[A-Z0-9].*");
      assertThat(f.source()).isNotBlank();
      assertThat(f.remedy() + f.limit() + f.actual()).doesNotContain("null", "Optional", "NaN");
      if (f.severity() == Severity.BLOCK || f.severity() == Severity.WARN) {
        assertThat(f.remedy()).as(f.message()).isNotBlank();
        assertThat(f.limit()).as(f.message()).isNotBlank();
        assertThat(f.actual()).as(f.message()).isNotBlank();
      }
    }
  }
}
