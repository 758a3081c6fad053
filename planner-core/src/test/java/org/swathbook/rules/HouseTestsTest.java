package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.DriverKind;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.Mix;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WalkedPasses;
import org.swathbook.season.outcome.WeedOutcome.LayerOverlap;
import org.swathbook.testing.Fixtures;

/**
 * The house rules at their very limits, which planner, rules and proof all ask here: what is at a
 * limit is fine. The house is that of {@link HouseRules#DEFAULTS}, with the numbers written out.
 */
class HouseTestsTest {
  private static final HouseRules HOUSE = HouseRules.DEFAULTS;
  private static final WeedId PALMER = WeedId.of("AMAPA");
  private static final WeedId KOCHIA = WeedId.of("KCHSC");

  /** 5 % of Palmer amaranth and 10 % of other weeds; twice that in one year of five. */
  @ParameterizedTest
  @CsvSource({
    "AMAPA, 5, 10, false",
    "AMAPA, 5.01, 5.01, true",
    "AMAPA, 5, 10.01, true",
    "AMAPA, 0, 10.01, true",
    "KCHSC, 10, 20, false",
    "KCHSC, 10.01, 10.01, true",
    "KCHSC, 6, 20.01, true"
  })
  void emergenceMayBeExposedUpToTheLimitAndTwiceThatInOneYearOfFive(
      String weed, double medianPct, double worstFifthPct, boolean exposed) {
    assertThat(HouseTests.isExposed(HOUSE, WeedId.of(weed), medianPct, worstFifthPct))
        .isEqualTo(exposed);
  }

  @Test
  void theMedianYearIsToldBeforeTheWorst() {
    assertThat(HouseTests.exposure(HOUSE, PALMER, 5.01, 30))
        .isEqualTo(new HouseTests.Exposure(true, 5.01, 5));
    assertThat(HouseTests.exposure(HOUSE, PALMER, 5, 30))
        .isEqualTo(new HouseTests.Exposure(false, 30, 10));
    assertThat(HouseTests.exposure(HOUSE, KOCHIA, 6, 30))
        .isEqualTo(new HouseTests.Exposure(false, 30, 20));
  }

  /** Days of overlap (7 asked), holes (one year of five), lasting to canopy, still to come. */
  @ParameterizedTest
  @CsvSource({
    "7, 0, 0, 40, false",
    "6.5, 0, 0, 40, true",
    // Next to nothing comes up any more.
    "-20, 1, 0, 1.99, false",
    "-20, 1, 0, 2, true",
    // The first layer lasts until rows close in half of the years.
    "-20, 0.2, 0.5, 40, false",
    "-20, 0.2, 0.49, 40, true",
    // Holes in more than a fifth of the years are too many whatever the median.
    "30, 0.2, 0, 40, false",
    "30, 0.21, 0, 40, true",
    "30, 0.21, 1, 40, true"
  })
  void layersOverlapByDaysUnlessTheyNeedNot(
      double days, double holes, double toCanopy, double toComePct, boolean isShort) {
    assertThat(HouseTests.isShort(HOUSE, new LayerOverlap(0, 1, days, holes, toCanopy, toComePct)))
        .isEqualTo(isShort);
  }

  @ParameterizedTest
  @CsvSource({
    "YES, 95, false",
    "YES, 94.99, true",
    "ZERO, 95, false",
    "ZERO, 94.99, true",
    "NO, 80, false",
    "NO, 79.99, true",
    "NO, 94, false"
  })
  void driversAreToBeControlledTo95PercentAndOtherWeedsTo80(
      DriverKind driver, double controlPct, boolean isShort) {
    WeedPressure weed = Fixtures.weed("T", "AMAPA", 10, driver, 0);
    assertThat(HouseTests.isShortOfControl(HOUSE, weed, controlPct)).isEqualTo(isShort);
  }

  @Test
  void withOneSiteGone90PercentAreAsked() {
    assertThat(HouseTests.isLostWithOneSite(HOUSE, 90)).isFalse();
    assertThat(HouseTests.isLostWithOneSite(HOUSE, 89.99)).isTrue();
  }

  @Test
  void windowsAreToBeMetInFourYearsOfFive() {
    assertThat(HouseTests.isShortOfWindows(HOUSE, 80)).isFalse();
    assertThat(HouseTests.isShortOfWindows(HOUSE, 79.99)).isTrue();
  }

  /** In half of the years; one that is never there is none, even of no years. */
  @ParameterizedTest
  @CsvSource({
    "5, 10, true",
    "4, 10, false",
    "1, 2, true",
    "1, 3, false",
    "0, 10, false",
    "0, 0, false"
  })
  void aLayerIsOneThatIsThereInHalfOfTheYears(int years, int ofYears, boolean layer) {
    assertThat(HouseTests.isLayer(years, ofYears)).isEqualTo(layer);
  }

  /** Two soil sites of the first layer on a weed, one of those behind it. */
  @Test
  void theFirstLayerOwesMoreSitesThanThoseBehindIt() {
    // Pass 0 lays one on kochia alone, 1 and 2 on Palmer amaranth; 3 in four years of ten.
    WalkedPasses season =
        years(
            10,
            y -> {
              List<LayerSpan> layers = new ArrayList<>();
              layers.add(layer(0, KOCHIA));
              layers.add(layer(1, PALMER));
              layers.add(layer(2, PALMER));
              if (y < 4) {
                layers.add(layer(3, PALMER));
              }
              return layers;
            });
    assertThat(HouseTests.soilSitesWanted(HOUSE, season, 0, PALMER)).isZero();
    assertThat(HouseTests.soilSitesWanted(HOUSE, season, 0, KOCHIA)).isEqualTo(2);
    assertThat(HouseTests.soilSitesWanted(HOUSE, season, 1, PALMER)).isEqualTo(2);
    assertThat(HouseTests.soilSitesWanted(HOUSE, season, 2, PALMER)).isEqualTo(1);
    assertThat(HouseTests.soilSitesWanted(HOUSE, season, 3, PALMER)).isZero();
    assertThat(HouseTests.soilSitesWanted(HOUSE, season, 1, KOCHIA)).isZero();
  }

  /** A gap in the middle makes two spans of one layer, and not a layer of two years. */
  @Test
  void twoSpansOfAYearAreOneYear() {
    WalkedPasses season =
        years(
            4,
            y ->
                y == 0
                    ? List.of(layer(0, PALMER), new LayerSpan(0, PALMER, List.of(), 300, 320))
                    : List.of());
    assertThat(HouseTests.isLayer(season, 0, PALMER)).isFalse();
  }

  private static LayerSpan layer(int pass, WeedId weed) {
    return new LayerSpan(pass, weed, List.of(), 250, 290);
  }

  /** The last pass that rested on one site alone counts, and not one that had two or none. */
  @Test
  void theLastLoneSiteIsThatOfTheLastPassThatHadOneAlone() {
    CaseBook book = SeasonCases.soybean(SeasonCases.weed("AMAPA", 80, DriverKind.YES, 0));
    SeasonCase c = SeasonCase.of(book);
    SiteControl four = c.site("2,4-D choline", "AMAPA", 92);
    SiteControl ten = c.site("glufosinate-ammonium", "AMAPA", 91);
    Mix any = book.mix("glyphosate", "1.13 lb ae/acre");
    WalkedPasses season =
        c.pass("2027-05-11", any, c.standing("AMAPA", 5, 1, four))
            .pass("2027-05-25", any, c.standing("AMAPA", 5, 2, four, ten))
            .pass("2027-06-08", any, c.standing("AMAPA", 5, 3))
            .pass("2027-06-15", any, c.toCome("AMAPA"))
            .pass("2027-06-22", any, c.standing("AMAPA", 5, 3, ten))
            .season()
            .walkedPasses();
    assertThat(HouseTests.loneSiteBefore(season, 0, PALMER)).isZero();
    assertThat(HouseTests.loneSiteBefore(season, 1, PALMER)).isEqualTo(1 << 4);
    assertThat(HouseTests.loneSiteBefore(season, 4, PALMER)).isEqualTo(1 << 4);
    assertThat(HouseTests.loneSiteBefore(season, 5, PALMER)).isEqualTo(1 << 10);
    assertThat(HouseTests.loneSiteBefore(season, 5, KOCHIA)).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "16, 16, true",
    "16, 1024, false",
    "16, 0, false",
    "1040, 1040, false",
    "0, 0, false"
  })
  void oneSiteIsLoneAgainAfterTheSame(long sites, long before, boolean again) {
    assertThat(HouseTests.isLoneAgain(sites, before)).isEqualTo(again);
  }

  private static WalkedPasses years(int n, IntFunction<List<LayerSpan>> layers) {
    List<WalkedPasses.Year> out = new ArrayList<>();
    for (int y = 0; y < n; y++) {
      out.add(new WalkedPasses.Year(List.of(), layers.apply(y)));
    }
    return new WalkedPasses(List.of(), out);
  }
}
