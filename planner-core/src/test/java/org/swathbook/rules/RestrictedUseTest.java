package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.swathbook.book.SprayRecord;
import org.swathbook.program.Applicator;
import org.swathbook.testing.MixCase;

/** Who applies a restricted-use product (US federal rules, from memory). */
class RestrictedUseTest {
  private static final Applicator CERTIFIED = new Applicator("R. Invented", "NE-0001");
  private static final Applicator NOT_CERTIFIED = new Applicator("R. Invented", "");

  private static MixCase corn(String tank) {
    return MixCase.in("corn", "glyphosate").day(20, "V3", 6).tank(tank);
  }

  private static List<Severity> of(MixCase job, Optional<Applicator> who) {
    return job
        .judge()
        .judge(who.map(w -> job.job().by(w)).orElseGet(job::job))
        .judgement()
        .findings()
        .stream()
        .filter(f -> f.rule().value().equals("restricted-use"))
        .map(Finding::severity)
        .toList();
  }

  @Test
  void anApplicatorWithoutACertificateIsWarnedOf() {
    assertThat(of(corn("atrazine 1.0 ai"), Optional.of(NOT_CERTIFIED)))
        .containsExactly(Severity.WARN, Severity.NOTE);
  }

  @Test
  void oneWithACertificateAndOneWhomNobodyNamesAreNot() {
    assertThat(of(corn("atrazine 1.0 ai"), Optional.of(CERTIFIED))).containsExactly(Severity.NOTE);
    assertThat(of(corn("atrazine 1.0 ai"), Optional.empty())).containsExactly(Severity.NOTE);
    assertThat(of(corn("glyphosate 1.0 ae"), Optional.of(NOT_CERTIFIED))).isEmpty();
  }

  @Test
  void theJournalsRowOfThisTankCountsAndThatOfAnotherDayDoesNot() {
    SprayRecord row =
        new SprayRecord(
            Optional.empty(),
            Optional.empty(),
            "",
            "",
            "R. Invented",
            "",
            OptionalDouble.empty(),
            "",
            OptionalDouble.empty());

    assertThat(
            of(
                corn("atrazine 1.0 ai").applied(20, "atrazine 1.0 ai", "corn", 2027, row),
                Optional.empty()))
        .containsExactly(Severity.WARN, Severity.NOTE);
    assertThat(
            of(
                corn("atrazine 1.0 ai").applied(2, "atrazine 0.5 ai", "corn", 2027, row),
                Optional.empty()))
        .containsExactly(Severity.NOTE);
  }

  private static final String PARAQUAT = "paraquat 0.5 cation";

  private static MixCase burndown() {
    return MixCase.in("corn").day(-5, "", 0).tank(PARAQUAT);
  }

  private static Optional<Applicator> trained(String... courses) {
    return Optional.of(new Applicator("R. Invented", "NE-0001", Optional.of(List.of(courses))));
  }

  private static List<String> asked(MixCase job, Optional<Applicator> who) {
    return job
        .judge()
        .judge(who.map(w -> job.job().by(w)).orElseGet(job::job))
        .judgement()
        .asks()
        .stream()
        .filter(a -> a.rule().value().equals("restricted-use"))
        .map(Ask::what)
        .toList();
  }

  /** Helms, Northeastern IPM Center: only certified applicators who were trained apply paraquat. */
  @Test
  void aTrainingThatNobodyStatesIsAskedFor() {
    assertThat(asked(burndown(), Optional.empty()))
        .containsExactly(
            "whether the applicator has had the training in paraquat that the label of paraquat"
                + " asks for");
    assertThat(asked(burndown(), Optional.of(CERTIFIED)))
        .singleElement()
        .asString()
        .startsWith("whether R. Invented has had the training in paraquat");
  }

  @Test
  void oneWhoHadItIsNotAskedAndOneWhoHadNotIsWarnedOf() {
    assertThat(asked(burndown(), trained("dicamba", "paraquat"))).isEmpty();
    assertThat(of(burndown(), trained("dicamba", "paraquat"))).containsExactly(Severity.NOTE);
    assertThat(asked(burndown(), trained("dicamba"))).isEmpty();
    assertThat(of(burndown(), trained("dicamba"))).containsExactly(Severity.WARN, Severity.NOTE);
    assertThat(of(burndown(), trained())).containsExactly(Severity.WARN, Severity.NOTE);
  }

  @Test
  void aRestrictedProductWithoutOneAsksForNone() {
    assertThat(asked(corn("atrazine 1.0 ai"), Optional.of(CERTIFIED))).isEmpty();
    assertThat(of(corn("atrazine 1.0 ai"), trained())).containsExactly(Severity.NOTE);
  }
}
