package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.rules.SeasonCases.soybean;
import static org.swathbook.rules.SeasonCases.weed;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.book.DriverKind;

/** Rules on a whole season at their limits and on either side. */
class SeasonBoundaryTest {
  private static final String NONE = "none";

  record Case(String rule, String says, String words, SeasonCase season) {
    @Override
    public String toString() {
      return rule + " " + says + ": " + words;
    }
  }

  private static Case of(String rule, String says, String words, SeasonCase season) {
    return new Case(rule, says, words, season);
  }

  static Stream<Case> cases() {
    return Stream.of(burndowns()).flatMap(List::stream);
  }

  /** Soybean planted without tillage on 11 May in standing kochia; glyphosate takes up to 12 in. */
  private static SeasonCase glyphosate(String date, double inches) {
    CaseBook book =
        soybean(weed("KCHSC", 60, DriverKind.YES, 0)).rain("2027-04-10", 1).rain("2027-04-25", 1);
    SeasonCase s = SeasonCase.of(book);
    return s.pass(
        date,
        book.mix("glyphosate", "1.13 lb ae/acre"),
        s.standing("KCHSC", 10, inches, s.site("glyphosate", "KCHSC", 88)));
  }

  private static List<Case> burndowns() {
    String rule = "burndown-missing";
    return List.of(
        of(
            rule,
            NONE,
            "a pass 14 days after planting on plants of 12 in",
            glyphosate("2027-05-25", 12)),
        of(rule, "warn", "15 days after planting", glyphosate("2027-05-26", 12)),
        of(
            rule,
            "warn",
            "14 days after planting on plants of 12.1 in",
            glyphosate("2027-05-25", 12.1)),
        of(rule, NONE, "on the day of planting, whatever the height", glyphosate("2027-05-11", 20)),
        of(
            rule,
            "warn",
            "a layer that starts at planting, when they stand already",
            glyphosate("2027-05-26", 12).layer("KCHSC", 252, 300)),
        of(
            rule,
            NONE,
            "a layer that held since February",
            glyphosate("2027-05-26", 12).layer("KCHSC", 150, 300)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysWhatItMust(Case c) {
    List<Finding> said =
        c.season().judge().findings().stream()
            .filter(f -> f.rule().value().equals(c.rule()))
            .toList();
    String gravest =
        said.stream()
            .map(Finding::severity)
            .min(Severity::compareTo)
            .map(Severity::word)
            .orElse(NONE);
    assertThat(gravest).as(said.toString()).isEqualTo(c.says());
  }
}
