package org.swathbook.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.testing.BookParts;
import org.swathbook.testing.DemoBook;

/**
 * The two past seasons of the demo book, read row by row as an adviser would before anything was
 * computed: what can work on the driver weed once the sites it resists are struck out. Judgements
 * are common practice, no source, but where one is named.
 */
class DemoSitesTest {
  private static final Book BOOK = DemoBook.BOOK;
  private static final SiteAudit AUDIT = SiteAudit.of(BOOK, BOOK.fields());

  private static SeasonSites season(String field, String weed, int season) {
    return AUDIT.ranked().stream()
        .map(RankedSites::sites)
        .filter(s -> s.field().id().value().equals(field))
        .filter(s -> s.weed().weed().id().value().equals(weed) && s.season() == season)
        .findFirst()
        .orElseThrow();
  }

  private static List<Integer> effective(String field, String weed, int season) {
    return season(field, weed, season).effective().stream().map(s -> s.number()).toList();
  }

  /**
   * Soybean year: 14 + 15 in the ground, then 4 + 10 on the leaves over 15. Read alone, the rows
   * look like four sites; but no burndown stands in the journal, so what was up at planting is far
   * above label height in June, and neither 4 nor 10 is effective on it.
   */
  @Test
  void twoLayersAreTwoSitesAndTallPlantsAddNone() {
    SeasonSites sites = season("ND-1", "AMAPA", 2025);
    assertThat(sites.applied().stream().map(s -> s.number()).toList())
        .containsExactly(4, 10, 14, 15);
    assertThat(effective("ND-1", "AMAPA", 2025)).containsExactly(14, 15);
    assertThat(sites.passes().get(1).weedStood()).isTrue();
  }

  /**
   * Imazethapyr, cloransulam (2) and glyphosate (9) on ragweed that resists 2 and is suspected of
   * 9.
   */
  @Test
  void onlyResistedSitesAreNoSiteAtAll() {
    assertThat(effective("ND-2", "AMBTR", 2025)).isEmpty();
    assertThat(season("ND-2", "AMBTR", 2025).applied().stream().map(s -> s.number()).toList())
        .containsExactly(2, 9);
  }

  /** 2026: isoxaflutole, tembotrione (27), atrazine (5), glyphosate (9); all three are resisted. */
  @Test
  void threeSitesAppliedMayBeNone() {
    assertThat(effective("ND-3", "AMAPA", 2026)).isEmpty();
    assertThat(season("ND-3", "AMAPA", 2026).applied()).hasSize(3);
    // 2025 had acetochlor (15) in the ground beside them.
    assertThat(effective("ND-3", "AMAPA", 2025)).isSubsetOf(15);
  }

  /** Flumioxazin, fomesafen, lactofen: 14 in both seasons, beside glyphosate that is resisted. */
  @Test
  void theThirdSoybeanCropLeansOnSite14Alone() {
    assertThat(effective("OB-4", "AMAPA", 2025)).isSubsetOf(14);
    assertThat(effective("OB-4", "AMAPA", 2026)).isSubsetOf(14);
    RankedSites last = ranked("OB-4", "AMAPA", 2026);
    assertThat(last.sites().dominant().map(s -> s.number())).contains(14);
    assertThat(last.streakYears()).isEqualTo(2);
  }

  /** Palmer resists 2, 9 and 14: of 14, 14, 9, 4 and 9 only dicamba (4) is left, late. */
  @Test
  void dicambaIsAllThatIsLeft() {
    assertThat(effective("QH-2", "AMAPA", 2025)).isSubsetOf(4);
    // 2026: acetochlor 15, atrazine 5, tembotrione 27, glufosinate 10: the field is mended.
    assertThat(season("QH-2", "AMAPA", 2026).effective()).hasSizeGreaterThanOrEqualTo(2);
  }

  /** Kochia that resists 9 and 4: atrazine (5) in 2025, paraquat (22) on the stubble in 2026. */
  @Test
  void kochiaMeetsOneSiteAYear() {
    assertThat(effective("QH-3", "KCHSC", 2025)).isSubsetOf(5);
    assertThat(effective("QH-3", "KCHSC", 2026)).isSubsetOf(22);
  }

  /** 5 and 9 are resisted: S-metolachlor, then acetochlor, are 15 twice. */
  @Test
  void site15HoldsTheTerracesTwice() {
    assertThat(effective("QH-4", "AMAPA", 2025)).isSubsetOf(15);
    assertThat(effective("QH-4", "AMAPA", 2026)).isSubsetOf(15);
    assertThat(ranked("QH-4", "AMAPA", 2026).streakYears()).isEqualTo(2);
  }

  /** Shattercane that resists 2: glyphosate (9) is the answer in both years of OB-2 and QH-4. */
  @Test
  void glyphosateHoldsShattercaneTwice() {
    assertThat(ranked("OB-2", "SORVU", 2026).sites().dominant().map(s -> s.number())).contains(9);
    assertThat(ranked("OB-2", "SORVU", 2026).streakYears()).isEqualTo(2);
    assertThat(effective("QH-4", "SORVU", 2025)).isSubsetOf(9);
  }

  /** Sorghum leaves nothing on shattercane; quizalofop (1) is alone in the soybeans after it. */
  @Test
  void noFoliarGrassSiteInSorghum() {
    assertThat(effective("OB-3", "SORVU", 2025)).isEmpty();
    assertThat(effective("OB-3", "SORVU", 2026)).isSubsetOf(1);
  }

  /** Fields that an adviser would not put among the leaning ones come last. */
  @Test
  void theModelFieldIsNoneOfTheWorst() {
    List<String> order =
        AUDIT.ranked().stream()
            .map(r -> r.sites().field().id().value() + " " + r.sites().weed().weed().id())
            .distinct()
            .collect(Collectors.toList());
    List<String> leaning =
        List.of("ND-3 AMAPA", "OB-4 AMAPA", "OB-3 SORVU", "QH-4 AMAPA", "QH-3 KCHSC");
    for (String one : leaning) {
      assertThat(order.indexOf(one)).as(one).isLessThan(order.indexOf("ND-1 AMAPA"));
    }
  }

  /** A season taken out of the book breaks no figure of another; only what spans both goes. */
  @Test
  void aSeasonGoneBreaksNoOther() {
    Book less =
        BookParts.of(BOOK)
            .pastSeasons(BOOK.pastSeasons().stream().filter(p -> p.season() == 2026).toList())
            .whole();
    List<SeasonSites> of2026 =
        AUDIT.ranked().stream().map(RankedSites::sites).filter(s -> s.season() == 2026).toList();
    List<SeasonSites> alone =
        SiteAudit.of(less, less.fields()).ranked().stream().map(RankedSites::sites).toList();
    assertThat(alone).hasSameSizeAs(of2026);
    for (SeasonSites s : alone) {
      SeasonSites before = season(s.field().id().value(), s.weed().weed().id().value(), 2026);
      assertThat(s.passes()).isEqualTo(before.passes());
      assertThat(s.met()).isEqualTo(before.met());
      assertThat(s.dependence()).isEqualTo(before.dependence());
    }
  }

  private static RankedSites ranked(String field, String weed, int season) {
    return AUDIT.ranked().stream()
        .filter(r -> r.sites().field().id().value().equals(field))
        .filter(r -> r.sites().weed().weed().id().value().equals(weed))
        .filter(r -> r.sites().season() == season)
        .findFirst()
        .orElseThrow();
  }
}
