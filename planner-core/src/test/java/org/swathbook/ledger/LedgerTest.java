package org.swathbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.swathbook.ledger.JournalRows.CATALOG;
import static org.swathbook.ledger.JournalRows.FIELD;
import static org.swathbook.ledger.JournalRows.dose;
import static org.swathbook.ledger.JournalRows.ledger;
import static org.swathbook.ledger.JournalRows.row;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Cap.CapPeriod;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Position;
import org.swathbook.measure.Period;
import org.swathbook.measure.Rate;
import org.swathbook.testing.Fixtures;

class LedgerTest {

  private static Cap cap(String amount, CapPeriod per, Position... counts) {
    return new Cap(Rate.parse(amount), per, Set.of(counts));
  }

  private static LocalDate day(String text) {
    return LocalDate.parse(text);
  }

  @Test
  void sumsASeasonUpToTheDayAsked() {
    Ledger l =
        ledger(
            row("2026-05-01", "atrazine", 1.6),
            row("2026-06-01", "atrazine", 1.0),
            row("2025-06-01", "atrazine", 2.0));
    Cap cap = cap("2.5 lb ai/acre", CapPeriod.SEASON);
    UsedAndLeft early = l.ofGroup("atrazine", cap, 2026, day("2026-05-31"));
    assertThat(early.used().lbPerAcre()).isEqualTo(1.6);
    assertThat(early.left().lbPerAcre()).isEqualTo(0.9, within(1e-12));
    assertThat(early.exceeded()).isFalse();
    UsedAndLeft late = l.ofGroup("atrazine", cap, 2026, day("2026-06-01"));
    assertThat(late.used().lbPerAcre()).isEqualTo(2.6);
    assertThat(late.left().lbPerAcre()).isZero();
    assertThat(late.exceeded()).isTrue();
    assertThat(late.share()).isEqualTo(1.04, within(1e-12));
  }

  @Test
  void aSumExactlyAtTheCapIsLegal() {
    Ledger l = ledger(row("2026-05-01", "atrazine", 2.4), row("2026-06-01", "atrazine", 0.1));
    assertThat(
            l.ofGroup("atrazine", cap("2.5 lb ai/acre", CapPeriod.SEASON), 2026, day("2026-06-01"))
                .exceeded())
        .isFalse();
  }

  @Test
  void fallBurndownCountsForTheNextSeasonButForItsOwnCalendarYear() {
    Ledger l =
        ledger(row("2025-11-10", "2,4-D choline", 0.95), row("2026-06-01", "2,4-D choline", 0.95));
    assertThat(used(l, CapPeriod.SEASON, "2026-06-01")).isEqualTo(1.9);
    assertThat(used(l, CapPeriod.CROP_YEAR, "2026-06-01")).isEqualTo(1.9);
    assertThat(used(l, CapPeriod.CALENDAR_YEAR, "2026-06-01")).isEqualTo(0.95);
  }

  @Test
  void twelveMonthsRollFromDayToDay() {
    Ledger l = ledger(row("2025-06-10", "2,4-D choline", 0.95));
    assertThat(used(l, CapPeriod.TWELVE_MONTHS, "2026-06-09")).isEqualTo(0.95);
    assertThat(used(l, CapPeriod.TWELVE_MONTHS, "2026-06-10")).isZero();
  }

  @Test
  void everyOtherYearCountsThisCalendarYearAndTheLast() {
    Ledger l = ledger(row("2025-06-10", "2,4-D choline", 0.95));
    assertThat(used(l, CapPeriod.TWO_CALENDAR_YEARS, "2026-12-31")).isEqualTo(0.95);
    assertThat(used(l, CapPeriod.TWO_CALENDAR_YEARS, "2027-01-01")).isZero();
  }

  private static double used(Ledger l, CapPeriod per, String on) {
    return l.ofGroup("2,4-D", cap("2 lb ae/acre", per), 2026, day(on)).used().lbPerAcre();
  }

  @Test
  void aSubCapCountsItsPositionsAndWhateverHasNone() {
    Ledger l =
        ledger(
            row("2026-05-01", "atrazine", 1.0, "pre", 80),
            row("2026-06-01", "atrazine", 0.5, "V5", 80),
            row("2026-06-20", "atrazine", 0.25, "", 80));
    assertThat(
            l.ofIngredient(
                    IngredientId.of("atrazine"),
                    cap("2 lb ai/acre", CapPeriod.SEASON, Position.POST),
                    2026,
                    day("2026-07-01"))
                .used()
                .lbPerAcre())
        .isEqualTo(0.75);
  }

  @Test
  void weightsOfAnotherBasisAreNotAddedButNamed() {
    UsedAndLeft sum =
        ledger(row("2026-05-01", "glyphosate", 1.0))
            .ofGroup("glyphosate", cap("6 lb ai/acre", CapPeriod.SEASON), 2026, day("2026-07-01"));
    assertThat(sum.used().lbPerAcre()).isZero();
    assertThat(sum.isComplete()).isFalse();
    assertThat(sum.notComparable()).hasSize(1);
  }

  @Test
  void daysOfOneJobAreOneApplication() {
    Ledger l =
        ledger(
            row("2026-06-01", "glufosinate-ammonium", 0.5, "V3", 40),
            row("2026-06-03", "glufosinate-ammonium", 0.5, "V3", 40),
            row("2026-06-04", "glufosinate-ammonium", 0.5, "V4", 80));
    List<OneApplication> all = l.applications("glufosinate-ammonium", 2026, day("2026-06-30"));
    assertThat(all).hasSize(2);
    assertThat(all.get(0).last()).isEqualTo("2026-06-03");
    assertThat(l.applications("glufosinate-ammonium", 2026, day("2026-06-02"))).hasSize(1);
    assertThat(l.applications("glufosinate-ammonium", 2025, day("2026-06-30"))).isEmpty();
  }

  @Test
  void repeatsCountFromTheLastEarlierDay() {
    Ledger l =
        ledger(row("2026-06-01", "2,4-D choline", 0.95), row("2026-06-09", "2,4-D choline", 0.95));
    LedgerEntry last = l.lastApplication("2,4-D", day("2026-06-09")).orElseThrow();
    assertThat(last.date()).isEqualTo("2026-06-01");
    assertThat(last.daysTo(day("2026-06-09"))).isEqualTo(8);
    assertThat(l.lastApplication("2,4-D", day("2026-06-01"))).isEmpty();
    assertThat(l.lastApplication("2,4-D", day("2026-06-10")).orElseThrow().date())
        .isEqualTo("2026-06-09");
  }

  @Test
  void theOtherHalfOfTheFieldIsNoRepeatButTheWholeFieldAgainIs() {
    double half = FIELD.acres() / 2;
    Ledger split =
        ledger(
            row("2026-06-01", "2,4-D choline", 0.95, "V3", half),
            row("2026-06-02", "2,4-D choline", 0.95, "V3", half));
    assertThat(split.lastApplication("2,4-D", day("2026-06-02"))).isEmpty();
    Ledger again =
        ledger(row("2026-06-01", "2,4-D choline", 0.95), row("2026-06-02", "2,4-D choline", 0.95));
    assertThat(again.lastApplication("2,4-D", day("2026-06-02"))).isPresent();
    Ledger notWritten =
        ledger(
            row("A", "2026-06-01", "2,4-D choline", 0.95, "V3", OptionalDouble.empty()),
            row("B", "2026-06-02", "2,4-D choline", 0.95, "V3", OptionalDouble.empty()));
    assertThat(notWritten.lastApplication("2,4-D", day("2026-06-02"))).isPresent();
  }

  @Test
  void plannedApplicationsCountForTheBooksSeason() {
    Ledger l =
        Ledger.of(
            CATALOG,
            FIELD,
            2027,
            List.of(row("2026-06-01", "atrazine", 1.0)),
            List.of(
                new PlannedApplication(
                    day("2027-05-01"), dose("atrazine", 1.25), Set.of(Position.PRE))));
    assertThat(
            l.ofGroup(
                    "atrazine",
                    cap("2.5 lb ai/acre", CapPeriod.TWELVE_MONTHS),
                    2027,
                    day("2027-05-01"))
                .used()
                .lbPerAcre())
        .isEqualTo(2.25);
    assertThat(l.entries().get(1).isPlanned()).isTrue();
    assertThat(l.applications("atrazine", 2027, day("2027-05-01"))).hasSize(1);
  }

  @Test
  void monthsBeforeAPlantingIncludeTheirFirstDayAndNotThePlantingDay() {
    Ledger l =
        ledger(
            row("2023-08-28", "atrazine", 1.0),
            row("2023-08-27", "atrazine", 1.0),
            row("2026-12-28", "atrazine", 1.0));
    assertThat(l.inMonthsBefore(day("2026-12-28"), Ledger.ROTATION_MONTHS))
        .extracting(LedgerEntry::date)
        .containsExactly(day("2023-08-28"));
  }

  /** Calendar months as labels count them; common practice, no source. */
  @Test
  void tenMonthsFromMidJulyEndInMidMay() {
    LedgerEntry e = ledger(row("2025-07-14", "atrazine", 1.0)).entries().get(0);
    LocalDate free = Period.parse("10 months").after(e.date());
    assertThat(free).isEqualTo("2026-05-14");
    assertThat(day("2026-04-28")).isBefore(free);
  }

  @Test
  void otherFieldsAreNotCounted() {
    assertThat(
            Ledger.of(
                    CATALOG,
                    Fixtures.field("ND-1"),
                    2027,
                    List.of(row("2026-06-01", "atrazine", 1.0)),
                    List.of())
                .entries())
        .isEmpty();
  }
}
