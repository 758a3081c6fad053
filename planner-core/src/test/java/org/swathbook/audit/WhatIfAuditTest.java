package org.swathbook.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.swathbook.audit.FieldChange.Outcome;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.catalog.Trait;
import org.swathbook.measure.Money;
import org.swathbook.testing.BookParts;
import org.swathbook.testing.DemoBook;

/** Changes of the last season of the demo book, held to what an adviser reads from its rows. */
class WhatIfAuditTest {
  private static final Book BOOK = DemoBook.BOOK;

  private static FieldChange on(Book book, String field, WhatIf change) {
    return WhatIfAudit.of(book, List.of(book.findField(field).orElseThrow()), change)
        .fields()
        .get(0);
  }

  private static WhatIf residual(String weed) {
    return new WhatIf.OverlappingResidual(BOOK.catalog().findWeed(weed).orElseThrow());
  }

  /** Atrazine and mesotrione at V6 on velvetleaf that is soon too tall for the one of them. */
  @Test
  void aSecondSiteIsPricedAndCounted() {
    FieldChange c = on(BOOK, "ND-4", new WhatIf.SecondFoliarSite());
    assertThat(c.outcome()).isEqualTo(Outcome.IMPROVED);
    assertThat(c.changes()).hasSize(1).first().asString().contains("glyphosate");
    Money cost = c.costPerAcre().orElseThrow();
    assertThat(c.costOfField()).contains(Money.ofDollars(cost.dollars() * 61.5));
    assertThat(c.weeds())
        .anySatisfy(
            e ->
                assertThat(e.after().fewerThanTwoPct())
                    .isLessThan(e.before().fewerThanTwoPct() - 10));
  }

  /** Soybeans without a trait: glyphosate would work on shattercane, and may not be sprayed. */
  @Test
  void whatALabelForbidsIsToldAndNotCounted() {
    WhatIfResult all =
        WhatIfAudit.of(
            BOOK, List.of(BOOK.findField("OB-3").orElseThrow()), new WhatIf.SecondFoliarSite());
    FieldChange c = all.fields().get(0);
    assertThat(c.outcome()).isEqualTo(Outcome.FORBIDDEN);
    assertThat(c.why().get(0)).contains("Glyphosate needs soybean with the glyphosate trait");
    assertThat(c.costPerAcre()).isEmpty();
    assertThat(all.acresImproved()).isZero();
    assertThat(all.cost()).isEqualTo(Money.ZERO);
  }

  /** The other side of the same limit: with the trait it is allowed. */
  @Test
  void withTheTraitTheSameChangeIsAllowed() {
    FieldChange c = on(with("OB-3", Set.of("glyphosate")), "OB-3", new WhatIf.SecondFoliarSite());
    assertThat(c.outcome()).isNotEqualTo(Outcome.FORBIDDEN);
    assertThat(c.changes()).first().asString().contains("glyphosate");
  }

  /** Side by side they share what the season was, and none sees what another has changed of it. */
  @Test
  void severalChangesAreEachWhatItIsAlone() {
    List<WhatIf> changes =
        List.of(
            new WhatIf.SecondFoliarSite(),
            new WhatIf.PostsBy("V3"),
            residual("AMAPA"),
            new WhatIf.SecondFoliarSite());

    List<WhatIfResult> together = WhatIfAudit.of(BOOK, BOOK.fields(), changes);

    assertThat(together)
        .isEqualTo(changes.stream().map(c -> WhatIfAudit.of(BOOK, BOOK.fields(), c)).toList());
    assertThat(together)
        .allSatisfy(
            r ->
                assertThat(r.fields())
                    .extracting(c -> c.field().id())
                    .containsExactlyElementsOf(BOOK.fields().stream().map(Field::id).toList()));
    assertThat(together.get(0).fields()).isNotEqualTo(together.get(1).fields());
  }

  private static Book with(String field, Set<String> traits) {
    return withSeasons(
        BOOK,
        BOOK.pastSeasons().stream()
            .map(
                p ->
                    p.field().value().equals(field)
                        ? new PastSeason(
                            p.field(),
                            p.season(),
                            p.crop(),
                            Optional.of(
                                traits.stream()
                                    .map(Trait::of)
                                    .collect(java.util.stream.Collectors.toSet())),
                            p.plantDate(),
                            p.harvestDate(),
                            p.tillage(),
                            p.weeds())
                        : p)
            .toList());
  }

  static Book withSeasons(Book book, List<PastSeason> seasons) {
    return BookParts.of(book).pastSeasons(seasons).whole();
  }

  /** The journal has the first post pass of ND-1 at V7: V7 is met, V6 is not. */
  @Test
  void aStageIsABoundary() {
    assertThat(on(BOOK, "ND-1", new WhatIf.PostsBy("V7")).outcome()).isEqualTo(Outcome.NOT_NEEDED);
    FieldChange c = on(BOOK, "ND-1", new WhatIf.PostsBy("V6"));
    assertThat(c.changes()).hasSize(1).first().asString().contains(" earlier than at V7");
    assertThat(c.costPerAcre()).contains(Money.ZERO);
  }

  /** Smaller plants are never controlled worse by the same post pass of these fields. */
  @Test
  void anEarlierPostMeetsSmallerPlants() {
    for (String field : List.of("ND-1", "ND-2", "OB-1", "OB-2")) {
      for (FieldChange.WeedEffect e : on(BOOK, field, new WhatIf.PostsBy("V3")).weeds()) {
        assertThat(e.after().controlPct()).as(field).isGreaterThan(e.before().controlPct());
      }
    }
  }

  /** V3 of corn is 3-leaf of sorghum; what a crop does not have stays unknown. */
  @Test
  void collarsAreCountedInBothWaysOfWriting() {
    var sorghum = BOOK.catalog().findCrop("grain-sorghum").orElseThrow();
    assertThat(EarlierPosts.stage(sorghum, "V3")).isEqualTo(sorghum.findStage("3-leaf"));
    assertThat(EarlierPosts.stage(sorghum, "V99")).isEmpty();
    assertThat(EarlierPosts.stage(sorghum, "R1")).isEmpty();
  }

  /** S-metolachlor and sulfentrazone lasted; pyroxasulfone goes over them in a pass of its own. */
  @Test
  void aResidualOfItsOwnCostsItsTrip() {
    FieldChange c = on(BOOK, "QH-1", residual("AMAPA"));
    assertThat(c.outcome()).isEqualTo(Outcome.IMPROVED);
    assertThat(c.changes().get(0)).contains("in a pass of its own on 9 Jun 2026");
    assertThat(c.changes().get(1)).startsWith("it overlaps the layer before by");
    assertThat(c.costPerAcre().orElseThrow().cents()).isGreaterThan(BOOK.passCost().cents());
  }

  @Test
  void aWeedThatDrivesNothingGivesNoOccasion() {
    assertThat(on(BOOK, "ND-2", residual("AMAPA")).outcome()).isEqualTo(Outcome.NOT_TRIED);
    assertThat(on(BOOK, "QH-3", new WhatIf.PostsBy("V3")).outcome()).isEqualTo(Outcome.NOT_TRIED);
    FieldChange none = on(withSeasons(BOOK, List.of()), "ND-1", new WhatIf.SecondFoliarSite());
    assertThat(none.outcome()).isEqualTo(Outcome.NOT_TRIED);
    assertThat(none.why().get(0)).contains("seasons.csv");
  }
}
