package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.catalog.Position.BURNDOWN;
import static org.swathbook.catalog.Position.POST;
import static org.swathbook.catalog.Position.PREPLANT;
import static org.swathbook.rules.OneActive.active;
import static org.swathbook.rules.OneActive.post;
import static org.swathbook.rules.OneActive.pre;
import static org.swathbook.rules.OneActive.soybean;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Movement;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.measure.Basis;
import org.swathbook.testing.IngredientBuilder;
import org.swathbook.testing.UseBuilder;

/** What happens exactly at a limit, between two, and where nothing is known. */
class LimitsTest {
  private static List<Finding> of(Findings findings, String rule) {
    return findings.sorted().stream().filter(f -> f.rule().value().equals(rule)).toList();
  }

  private static List<String> asked(Findings findings, String rule) {
    return findings.sortedAsks().stream()
        .filter(a -> a.rule().value().equals(rule))
        .map(Ask::what)
        .toList();
  }

  @Test
  void aRateAtItsEndsIsLegal() {
    CaseBook book = CaseBook.of(soybean()).active(active(pre()));

    assertThat(of(book.uses("2027-05-11", "testactive", "1.0 lb ai/acre"), "rate-above-use"))
        .isEmpty();
    assertThat(of(book.uses("2027-05-11", "testactive", "0.5 lb ai/acre"), "rate-below-use"))
        .isEmpty();
    assertThat(of(book.uses("2027-05-11", "testactive", "1.001 lb ai/acre"), "rate-above-use"))
        .hasSize(1);
  }

  @Test
  void theSameActiveOfTwoProductsIsAddedUp() {
    CaseBook book = CaseBook.of(soybean()).active(active(pre()));

    Findings twice =
        book.uses("2027-05-11", "testactive", "0.6 lb ai/acre", "testactive", "0.5 lb ai/acre");

    assertThat(of(twice, "rate-above-use"))
        .extracting(Finding::actual)
        .containsOnly("1.1 lb ai/acre");
  }

  @Test
  void theRemedyOfARateIsInPracticalStepsOfTheProduct() {
    CaseBook book = CaseBook.of(soybean()).active(active(pre()));

    // 1.0 lb of a 4 lb/gal product is a quart, 32 fl oz.
    assertThat(of(book.uses("2027-05-11", "testactive", "3.1 lb ai/acre"), "rate-above-use"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.remedy()).startsWith("at most 32 fl oz/acre");
              assertThat(f.message()).contains("check the decimal point");
            });
  }

  /** Ten times a rate of the use is a slipped decimal; more than ten times the most is not. */
  @Test
  void tenTimesARateIsNamedAsASlippedDecimal() {
    CaseBook book = CaseBook.of(soybean()).active(active(pre()));

    assertThat(of(book.uses("2027-05-11", "testactive", "10 lb ai/acre"), "rate-above-use"))
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("a tenth of it, 1"));
    assertThat(of(book.uses("2027-05-11", "testactive", "10.5 lb ai/acre"), "rate-above-use"))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.message())
                    .doesNotContain("a tenth of it")
                    .contains("check the decimal point"));
    assertThat(of(book.uses("2027-05-11", "testactive", "1.1 lb ai/acre"), "rate-above-use"))
        .singleElement()
        .satisfies(f -> assertThat(f.message()).doesNotContain("decimal"));
  }

  @Test
  void aPlantingIntervalIsMetOnItsLastDayAndARateBetweenBandsTakesTheLonger() {
    CaseBook book =
        CaseBook.of(soybean())
            .active(
                active(
                    pre()
                        .plantingBand("0.5 lb ai/acre", 7, 0)
                        .plantingBand("1.0 lb ai/acre", 30, 0)));

    assertThat(of(book.uses("2027-05-04", "testactive", "0.5 lb ai/acre"), "planting-interval"))
        .isEmpty();
    assertThat(of(book.uses("2027-05-05", "testactive", "0.5 lb ai/acre"), "planting-interval"))
        .hasSize(1);
    assertThat(of(book.uses("2027-05-04", "testactive", "0.6 lb ai/acre"), "planting-interval"))
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.remedy())
                    .isEqualTo("planting on or after 3 Jun 2027, or at most 0.5 lb ai/acre"));
  }

  /** A label that wants a week before planting leaves no day between planting and emergence. */
  @Test
  void afterPlantingAWaitBeforeItIsOver() {
    CaseBook book =
        CaseBook.of(soybean())
            .active(
                active(
                    pre()
                        .plantingBand("0.5 lb ai/acre", 0, 0)
                        .plantingBand("1.0 lb ai/acre", 7, 0)));

    assertThat(of(book.uses("2027-05-12", "testactive", "0.5 lb ai/acre"), "planting-interval"))
        .isEmpty();
    assertThat(of(book.uses("2027-05-12", "testactive", "1.0 lb ai/acre"), "planting-interval"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.BLOCK);
              assertThat(f.message())
                  .endsWith(
                      "needs 7 days before soybean is planted; this pass comes after planting.");
              assertThat(f.remedy()).isEqualTo("an active that needs no wait here");
            });
  }

  @Test
  void aRateAboveEveryBandIsAskedNotPassedOver() {
    CaseBook book =
        CaseBook.of(soybean()).active(active(pre().plantingBand("0.5 lb ai/acre", 7, 0)));

    Findings out = book.uses("2027-04-01", "testactive", "0.9 lb ai/acre");

    assertThat(of(out, "planting-interval")).isEmpty();
    assertThat(asked(out, "planting-interval")).hasSize(1);
  }

  @Test
  void monthsOfANextCropAreCalendarMonths() {
    IngredientBuilder ten =
        active(post().noTiming()).rotation("corn", TimingCases.months(SoilCondition.ALWAYS, 10));

    Findings dayBefore =
        CaseBook.of(soybean().next("corn", "2028-05-13"))
            .active(ten)
            .uses("2027-07-14", "testactive", "0.5 lb ai/acre");
    Findings onTheDay =
        CaseBook.of(soybean().next("corn", "2028-05-14"))
            .active(ten)
            .uses("2027-07-14", "testactive", "0.5 lb ai/acre");

    assertThat(of(dayBefore, "next-crop-interval"))
        .extracting(Finding::severity)
        .containsExactly(Severity.BLOCK);
    assertThat(of(onTheDay, "next-crop-interval"))
        .extracting(Finding::severity)
        .containsExactly(Severity.NOTE);
  }

  @Test
  void aHarvestIsLegalOnTheDayTheIntervalEndsAndRefusedUsesBlock() {
    CaseBook book =
        CaseBook.of(soybean().harvest("2027-09-28").uses(Commodity.GRAIN, Commodity.GRAZING))
            .active(active(post().grainDays(60).refusedFor(Commodity.GRAZING)));

    Findings inTime = book.uses("2027-07-30", "testactive", "0.5 lb ai/acre");
    assertThat(of(inTime, "harvest-interval")).isEmpty();
    assertThat(of(inTime, "grazing-feed"))
        .singleElement()
        .satisfies(f -> assertThat(f.message()).contains("refuses grazing"));
    assertThat(of(book.uses("2027-07-31", "testactive", "0.5 lb ai/acre"), "harvest-interval"))
        .hasSize(1);
  }

  @Test
  void aSumAtTheCapIsLegal() {
    CaseBook book = CaseBook.of(soybean()).active(active(pre().cap("1.5 lb ai/acre"), post()));

    Findings at =
        book.sequence(
            book.pass(0, "2027-05-11", "testactive", "0.7 lb ai/acre"),
            book.pass(1, "2027-06-11", "testactive", "0.8 lb ai/acre"));

    assertThat(of(at, "annual-cap")).extracting(Finding::severity).containsExactly(Severity.NOTE);
  }

  @Test
  void theJournalOfTheSeasonCountsAndThatOfTheLastDoesNot() {
    CaseBook book =
        CaseBook.of(soybean())
            .active(active(pre().cap("1.5 lb ai/acre")))
            .applied("2026-05-11", 2026, "testactive", "1.0 lb ai/acre", "soybean", "pre")
            .applied("2027-04-11", 2027, "testactive", "0.9 lb ai/acre", "soybean", "preplant");

    assertThat(
            of(
                book.sequence(book.pass(0, "2027-05-11", "testactive", "0.6 lb ai/acre")),
                "annual-cap"))
        .extracting(Finding::severity)
        .containsExactly(Severity.NOTE);
    assertThat(
            of(
                book.sequence(book.pass(0, "2027-05-11", "testactive", "0.7 lb ai/acre")),
                "annual-cap"))
        .singleElement()
        .satisfies(f -> assertThat(f.actual()).isEqualTo("1.6 lb ai/acre"));
  }

  @Test
  void aPassThatTheJournalHoldsCountsOnce() {
    CaseBook book =
        CaseBook.of(soybean())
            .active(active(pre().cap("1.5 lb ai/acre").repeatDays(14)))
            .applied("2027-05-12", 2027, "testactive", "0.9 lb ai/acre", "soybean", "pre");

    Findings made = book.sequence(book.pass(0, "2027-05-11", "testactive", "0.9 lb ai/acre"));
    Findings another = book.sequence(book.pass(0, "2027-05-20", "testactive", "0.9 lb ai/acre"));

    assertThat(made.isBlocked()).isFalse();
    assertThat(another.isBlocked()).isTrue();
  }

  @Test
  void allFormsOfAnAcidShareTheLargestCapAndASmallerOneCountsItsFormAlone() {
    CaseBook book =
        CaseBook.of(soybean())
            .active(form("testacid ester", "1.0 lb ae/acre"))
            .active(form("testacid choline", "2.0 lb ae/acre"));

    Findings ester =
        book.sequence(
            book.pass(0, "2027-04-20", "testacid ester", "0.6 lb ae/acre"),
            book.pass(1, "2027-05-09", "testacid ester", "0.5 lb ae/acre"));
    Findings together =
        book.sequence(
            book.pass(0, "2027-04-20", "testacid ester", "0.9 lb ae/acre"),
            book.pass(1, "2027-05-09", "testacid choline", "1.0 lb ae/acre"));
    Findings tooMuch =
        book.sequence(
            book.pass(0, "2027-04-20", "testacid ester", "0.9 lb ae/acre"),
            book.pass(1, "2027-05-09", "testacid choline", "1.2 lb ae/acre"));

    assertThat(of(ester, "annual-cap"))
        .filteredOn(f -> f.severity() == Severity.BLOCK)
        .singleElement()
        .satisfies(f -> assertThat(f.message()).startsWith("Testacid ester: 1.1 lb ae/acre"));
    assertThat(together.isBlocked()).isFalse();
    assertThat(of(tooMuch, "annual-cap"))
        .filteredOn(f -> f.severity() == Severity.BLOCK)
        .singleElement()
        .satisfies(f -> assertThat(f.message()).startsWith("Testacid: 2.1 lb ae/acre"));
  }

  private static IngredientBuilder form(String name, String cap) {
    return IngredientBuilder.of(name, 4, Movement.SYSTEMIC, Basis.AE)
        .capGroup("testacid")
        .foliar(1)
        .use(
            UseBuilder.of("soybean", BURNDOWN, PREPLANT)
                .before("", "planting")
                .traits()
                .rate("0.25-1.5 lb ae/acre")
                .plantingDays(0)
                .applications(4)
                .repeatDays(7)
                .cap(cap)
                .noSoilPh());
  }

  @Test
  void theStrictestSoilOfAFieldGoverns() {
    UseBuilder use = pre().soilPh(Limit.below(7.5));
    CaseBook fine = CaseBook.of(soybean().soil(SoilTexture.LOAM, 2, 7.4)).active(active(use));
    CaseBook at = CaseBook.of(soybean().soil(SoilTexture.LOAM, 2, 7.5)).active(active(use));

    assertThat(of(fine.uses("2027-05-11", "testactive", "0.6 lb ai/acre"), "soil-limit")).isEmpty();
    assertThat(of(at.uses("2027-05-11", "testactive", "0.6 lb ai/acre"), "soil-limit")).hasSize(1);
  }

  @Test
  void traitsThatNobodyStatedBlockOverTheCropAndAreAskedBeforeIt() {
    CaseBook book =
        CaseBook.of(soybean().traitsUnknown())
            .active(active(pre().traits("safened-seed"), post().traits("glyphosate")));

    Findings over = book.uses(book.dayOfStage("V3"), "testactive", "0.6 lb ai/acre");
    Findings before = book.uses("2027-05-11", "testactive", "0.6 lb ai/acre");

    assertThat(of(over, "trait-needed"))
        .extracting(Finding::severity)
        .containsExactly(Severity.BLOCK);
    assertThat(of(before, "trait-needed")).isEmpty();
    assertThat(asked(before, "trait-needed")).hasSize(1);
  }

  @Test
  void limitsThatNobodyStatedAreAskedAndThoseOfOtherKindsAreNot() {
    UseBuilder bare = UseBuilder.of("soybean", POST);
    CaseBook book = CaseBook.of(soybean()).active(active(bare));

    Findings out = book.uses(book.dayOfStage("V3"), "testactive", "0.6 lb ai/acre");

    assertThat(out.isBlocked()).isFalse();
    assertThat(out.sortedAsks())
        .extracting(a -> a.rule().value())
        .contains(
            "trait-needed", "stage-window", "rate-above-use", "harvest-interval", "soil-limit")
        .doesNotContain("planting-interval");
    assertThat(out.sortedAsks()).allSatisfy(a -> assertThat(a.where()).isNotBlank());
  }

  @Test
  void ofSeveralUsesTheOneThatAllowsItSpeaks() {
    CaseBook book =
        CaseBook.of(soybean())
            .active(
                active(pre().traits("glyphosate"), pre().plantingBand("1.0 lb ai/acre", 20, 0)));

    assertThat(book.uses("2027-04-10", "testactive", "0.6 lb ai/acre").isBlocked()).isFalse();
    assertThat(book.uses("2027-05-01", "testactive", "0.6 lb ai/acre").isBlocked()).isTrue();
  }

  @Test
  void lastLegalDaysAreNamed() {
    CaseBook book = CaseBook.of(soybean()).active(active(post().before("emergence", "R1")));
    LocalDate r1 = book.dayOfStage("R1");

    assertThat(of(book.uses(r1.plusDays(2), "testactive", "0.6 lb ai/acre"), "stage-window"))
        .singleElement()
        .satisfies(
            f -> assertThat(f.remedy()).startsWith("on or before " + Say.date(r1.minusDays(1))));
  }

  @Test
  void closeToAStageWarns() {
    CaseBook book = CaseBook.of(soybean()).active(active(post().before("emergence", "R1")));

    assertThat(
            of(
                book.uses(book.dayOfStage("R1").minusDays(1), "testactive", "0.6 lb ai/acre"),
                "stage-window"))
        .extracting(Finding::severity)
        .containsExactly(Severity.WARN);
    assertThat(of(book.uses(book.dayOfStage("V3"), "testactive", "0.6 lb ai/acre"), "stage-window"))
        .isEmpty();
  }
}
