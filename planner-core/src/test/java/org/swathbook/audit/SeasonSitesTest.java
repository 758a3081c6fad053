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

/** Counts and effective numbers of passes that are written down here. */
class SeasonSitesTest {
  private static final Book BOOK = DemoBook.BOOK;
  private static final Field FIELD = BOOK.findField("ND-1").orElseThrow();
  private static final WeedPressure WEED = BOOK.weedsOf(FIELD.id()).get(0);

  private static SiteControl site(int number, double pct, boolean struck) {
    return new SiteControl(
        Site.of(number), IngredientId.of("x"), pct, struck, !struck && pct >= 80);
  }

  private static SprayedPass pass(List<SiteControl> foliar, List<SiteControl> soil) {
    return new SprayedPass(LocalDate.of(2026, 6, 1), "A", true, foliar, soil, false);
  }

  private static SeasonSites season(SprayedPass... passes) {
    return new SeasonSites(
        FIELD,
        WEED,
        2026,
        new TreeSet<>(),
        List.of(passes),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  /** The worked example of the kill-weighted number (ours): 15, twice 14, 9 hardly, 10. */
  @Test
  void theWorkedExample() {
    SeasonSites s =
        season(
            pass(List.of(site(14, 70, false), site(9, 5, false)), List.of(site(15, 80, false))),
            pass(List.of(site(14, 60, false), site(10, 90, false)), List.of()));
    assertThat(s.effectiveNumber()).isCloseTo(3.086803, within(1e-6));
    assertThat(s.inverseSimpson()).isCloseTo(2.987001, within(1e-6));
    // Pass by pass; over the season site 14 would reach 88 %, which the house does not count.
    assertThat(s.effective()).containsExactly(Site.of(10), Site.of(15));
    assertThat(s.dominant()).contains(Site.of(10));
  }

  @Test
  void oneMoreEffectiveSiteNeverLowersTheCount() {
    for (int present = 0; present <= 5; present++) {
      List<SiteControl> foliar = new ArrayList<>();
      for (int i = 1; i <= present; i++) {
        foliar.add(site(i, 40 + 12 * i, i % 3 == 0));
      }
      int before = season(pass(foliar, List.of())).effective().size();
      for (int more : new int[] {1, 4, 15}) {
        SeasonSites with =
            season(pass(foliar, List.of()), pass(List.of(), List.of(site(more, 85, false))));
        assertThat(with.effective().size()).isBetween(before, before + 1);
        assertThat(with.effective()).contains(Site.of(more));
      }
    }
  }

  @Test
  void equalSitesCountAlikeWhicheverTheyAre() {
    SeasonSites a = season(pass(List.of(site(4, 85, false), site(10, 85, false)), List.of()));
    SeasonSites b = season(pass(List.of(site(14, 85, false)), List.of(site(27, 85, false))));
    assertThat(a.effectiveNumber()).isEqualTo(b.effectiveNumber()).isCloseTo(2, within(1e-12));
    assertThat(a.dominantShare()).isEqualTo(0.5);
  }

  /** It still kills those that do not resist it, so it may dominate; it is no site to count on. */
  @Test
  void aResistedSiteSelectsButDoesNotCount() {
    SeasonSites s = season(pass(List.of(site(27, 60, true), site(10, 30, false)), List.of()));
    assertThat(s.dominant()).contains(Site.of(27));
    assertThat(s.effective()).isEmpty();
    assertThat(s.effectiveNumber()).isCloseTo(1, within(1e-12));
    assertThat(s.leaningPct()).isEqualTo(100);
  }
}
