package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.rules.SeasonCases.soybean;
import static org.swathbook.rules.SeasonCases.weed;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.swathbook.book.DriverKind;
import org.swathbook.rules.SeasonCase.Outcome;

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
    return Stream.of(burndowns(), oneSite(), firstPasses(), overlaps(), seasons())
        .flatMap(List::stream);
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

  private static SeasonCase palmer(Outcome outcome) {
    return SeasonCase.of(soybean(weed("AMAPA", 80, DriverKind.YES, 0))).outcome("AMAPA", outcome);
  }

  private static List<Case> oneSite() {
    String rule = "depends-on-one-site";
    return List.of(
        of(rule, "warn", "89.9 % without site 14", palmer(new Outcome().without(14, 89.9))),
        of(rule, "note", "the house's 90 % without it", palmer(new Outcome().without(14, 90))),
        of(rule, "note", "92.9 % without it", palmer(new Outcome().without(14, 92.9))),
        of(rule, NONE, "93 % without it", palmer(new Outcome().without(14, 93))),
        of(
            rule,
            NONE,
            "ten times the survivors without it",
            palmer(new Outcome().without(14, 98).survivors(150).survivorsWithout(1500))),
        of(
            rule,
            "note",
            "more than ten times the survivors",
            palmer(new Outcome().without(14, 98).survivors(150).survivorsWithout(1501))),
        of(
            rule,
            NONE,
            "many times next to nothing, less than a plant on an acre",
            palmer(new Outcome().without(14, 98).survivors(0.001).survivorsWithout(0.9))));
  }

  private static SeasonCase early(double lostShare) {
    CaseBook book = soybean(weed("AMAPA", 80, DriverKind.YES, 0));
    SeasonCase s = SeasonCase.of(book);
    return s.pass(
            "2027-05-24",
            book.mix("glyphosate", "1.13 lb ae/acre"),
            s.standing("AMAPA", 40, 3, s.site("glyphosate", "AMAPA", 95)))
        .late(lostShare, 3.2);
  }

  private static List<Case> firstPasses() {
    String rule = "late-first-pass";
    return List.of(
        of(rule, NONE, "in time, with 2 % of the yield lost by then", early(0.02)),
        of(rule, "warn", "in time, with 2.1 % of the yield lost by then", early(0.021)));
  }

  private static SeasonCase layers(
      double days, double holes, double canopyShare, double toComePct) {
    CaseBook book = soybean(weed("AMAPA", 80, DriverKind.YES, 0));
    SeasonCase s = SeasonCase.of(book);
    for (String date : List.of("2027-05-11", "2027-06-08")) {
      s.pass(date, book.mix("S-metolachlor", "1.0 lb ai/acre"), s.toCome("AMAPA"));
    }
    return s.outcome("AMAPA", new Outcome().overlap(days, holes, canopyShare, toComePct));
  }

  private static List<Case> overlaps() {
    String rule = "layer-overlap";
    return List.of(
        of(rule, NONE, "the house's 7 days", layers(7, 0, 0, 40)),
        of(rule, "warn", "6 days", layers(6, 0, 0, 40)),
        of(rule, NONE, "holes in one year of five", layers(8, 0.2, 0, 40)),
        of(rule, "warn", "holes in three years of ten", layers(8, 0.3, 0, 40)),
        of(rule, "warn", "2 % still to come", layers(-4, 0.6, 0, 2)),
        of(rule, NONE, "1.9 % still to come", layers(-4, 0.6, 0, 1.9)),
        of(
            rule,
            NONE,
            "a first layer that lasts to canopy in half of the years",
            layers(-4, 0.2, 0.5, 40)),
        of(rule, "warn", "one that does in four years of ten", layers(-4, 0.2, 0.4, 40)),
        of(
            rule,
            "warn",
            "one that does in half, and holes in the others",
            layers(-4, 0.5, 0.5, 40)));
  }

  private static SeasonCase of(String eppo, double perM2, DriverKind driver, Outcome outcome) {
    return SeasonCase.of(soybean(weed(eppo, perM2, driver, 0))).outcome(eppo, outcome);
  }

  /** The house's defaults: 95 and 80 % control, 200 survivors an acre, 5 and 10 % exposed, 80 %. */
  private static List<Case> seasons() {
    DriverKind driver = DriverKind.YES;
    DriverKind other = DriverKind.NO;
    return List.of(
        of(
            "weed-not-covered",
            NONE,
            "a driver controlled to 95 %",
            of("AMAPA", 80, driver, new Outcome().control(95))),
        of(
            "weed-not-covered",
            "warn",
            "a driver controlled to 94.9 %",
            of("AMAPA", 80, driver, new Outcome().control(94.9))),
        of(
            "weed-not-covered",
            NONE,
            "another weed controlled to 80 %",
            of("ABUTH", 3, other, new Outcome().control(80))),
        of(
            "weed-not-covered",
            "warn",
            "another weed controlled to 79.9 %",
            of("ABUTH", 3, other, new Outcome().control(79.9))),
        of(
            "weed-not-covered",
            "note",
            "the same of 0.9 plants/m²",
            of("ABUTH", 0.9, other, new Outcome().control(79.9))),
        of(
            "survivors",
            NONE,
            "200 on an acre",
            of("AMAPA", 80, driver, new Outcome().survivors(200))),
        of(
            "survivors",
            "note",
            "201 on an acre",
            of("AMAPA", 80, driver, new Outcome().survivors(201))),
        of(
            "survivors",
            "note",
            "2000, ten times as many",
            of("AMAPA", 80, driver, new Outcome().survivors(2000))),
        of(
            "survivors",
            "warn",
            "2001 on an acre",
            of("AMAPA", 80, driver, new Outcome().survivors(2001))),
        of(
            "survivors",
            NONE,
            "0.9 of a weed of which none may live",
            of("AMAPA", 80, DriverKind.ZERO, new Outcome().survivors(0.9))),
        of(
            "survivors",
            "warn",
            "one of it",
            of("AMAPA", 80, DriverKind.ZERO, new Outcome().survivors(1))),
        of(
            "layer-gap",
            NONE,
            "5 % of Palmer amaranth exposed",
            of("AMAPA", 80, driver, new Outcome().exposed(5))),
        of("layer-gap", "warn", "5.1 % of it", of("AMAPA", 80, driver, new Outcome().exposed(5.1))),
        of(
            "layer-gap",
            NONE,
            "10 % of kochia exposed",
            of("KCHSC", 15, driver, new Outcome().exposed(10))),
        of(
            "layer-gap",
            "warn",
            "10.1 % of it",
            of("KCHSC", 15, driver, new Outcome().exposed(10.1))),
        of(
            "window-confidence",
            NONE,
            "80 % of the years",
            SeasonCase.of(soybean(weed("AMAPA", 80, driver, 0))).windowConfidence(80)),
        of(
            "window-confidence",
            "warn",
            "79.9 % of the years",
            SeasonCase.of(soybean(weed("AMAPA", 80, driver, 0))).windowConfidence(79.9)));
  }

  @Test
  void eachDayOfDelayIsPriced() {
    assertThat(early(0.034).judge().findings())
        .filteredOn(f -> f.rule().value().equals("late-first-pass"))
        .extracting(Finding::message)
        .singleElement()
        .asString()
        .endsWith(
            " What stands then has cost 3.4 % of the yield, and each day later costs $3.20/acre.");
  }

  @Test
  void whatMightStandBesideTheOneSiteIsNamed() {
    CaseBook book = soybean(weed("AMAPA", 80, DriverKind.YES, 0.9, 2, 9));
    SeasonCase s = SeasonCase.of(book);
    s.pass(
            "2027-06-08",
            book.mix("2,4-D choline", "0.95 lb ae/acre"),
            s.standing("AMAPA", 12, 3, s.site("2,4-D choline", "AMAPA", 91)))
        .outcome("AMAPA", new Outcome().without(4, 40));

    assertThat(s.judge().findings())
        .filteredOn(f -> f.rule().value().equals("depends-on-one-site"))
        .extracting(Finding::remedy)
        .containsExactly(
            "another effective site beside site 4: through leaves site 10, through the soil site"
                + " 15; plan tells which is enough and what it costs");
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
