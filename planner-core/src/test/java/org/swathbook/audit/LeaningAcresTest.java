package org.swathbook.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.testing.DemoBook;

/** Acres on a single effective site, added up by hand (the examples are ours). */
class LeaningAcresTest {
  private static final Book BOOK = DemoBook.BOOK;

  private static List<SeasonSites> field(String id, int effective) {
    return List.of(season(id, 0, 2026, effective));
  }

  private static SeasonSites season(String id, int weed, int season, int effective) {
    Field field = BOOK.findField(id).orElseThrow();
    WeedPressure pressure = BOOK.weedsOf(field.id()).get(weed);
    List<SiteControl> sites = new ArrayList<>();
    for (int i = 1; i <= effective; i++) {
      sites.add(new SiteControl(Site.of(i), IngredientId.of("x"), 90, false, true));
    }
    return new SeasonSites(
        field,
        pressure,
        season,
        new TreeSet<>(),
        List.of(new SprayedPass(LocalDate.of(season, 6, 1), "A", true, sites, List.of(), false)),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  /**
   * ND-1 76 acres on three sites, ND-2 118 on one, ND-3 152.4 on two, QH-1 131 on one: 249 of 477.4
   * acres stand on one site, 52.16 %.
   */
  @Test
  void acresOnOneSite() {
    LeaningAcres acres =
        acres(List.of(field("ND-1", 3), field("ND-2", 1), field("ND-3", 2), field("QH-1", 1)));
    assertThat(acres.acres()).isCloseTo(76 + 118 + 152.4 + 131, within(1e-9));
    assertThat(acres.onOne()).isCloseTo(118 + 131, within(1e-9));
    assertThat(acres.onNone()).isZero();
    assertThat(acres.onOnePct()).isCloseTo(52.1575, within(1e-4));
  }

  /** A field counts once, by its driver weed that met fewest, in its last season alone. */
  @Test
  void theWeedThatMetFewestSpeaksForTheField() {
    LeaningAcres acres =
        acres(
            List.of(
                List.of(season("QH-2", 0, 2026, 3)),
                List.of(season("QH-2", 1, 2025, 0), season("QH-2", 1, 2026, 1))));
    assertThat(acres.acres()).isEqualTo(128);
    assertThat(acres.onOne()).isEqualTo(128);
    assertThat(acres.onNone()).isZero();
  }

  private static LeaningAcres acres(List<List<SeasonSites>> byWeed) {
    return LeaningAcres.of(byWeed.stream().map(Leaning::of).map(Leaning::last).toList());
  }

  @Test
  void noAcresAreNoShare() {
    LeaningAcres none = LeaningAcres.of(List.of());
    assertThat(none.onOnePct()).isZero();
    assertThat(none.onNonePct()).isZero();
  }

  /**
   * Turnover after Evans et al. 2016 (Pest Management Science 72, the study's code): sites 9 14 15,
   * then 9 10 15, then 9 10 14, then 9 alone: 2 of 4, 2 of 4, 2 of 3 gained or lost. The years are
   * ours.
   */
  @Test
  void turnoverOfFourYears() {
    int[][] years = {{9, 14, 15}, {9, 10, 15}, {9, 10, 14}, {9}};
    double[] expected = {0.5, 0.5, 2.0 / 3};
    for (int i = 1; i < years.length; i++) {
      assertThat(
              SiteAudit.turnover(applied(2020 + i - 1, years[i - 1]), applied(2020 + i, years[i])))
          .hasValueSatisfying(t -> assertThat(t).isBetween(0.0, 1.0))
          .get()
          .isEqualTo(expected[i - 1]);
    }
  }

  private static SeasonSites applied(int season, int[] sites) {
    SeasonSites plain = season("ND-1", 0, season, 0);
    TreeSet<Site> applied = new TreeSet<>();
    for (int s : sites) {
      applied.add(Site.of(s));
    }
    return new SeasonSites(
        plain.field(),
        plain.weed(),
        season,
        applied,
        plain.passes(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }
}
