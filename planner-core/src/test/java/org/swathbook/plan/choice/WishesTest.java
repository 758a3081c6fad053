package org.swathbook.plan.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Money;
import org.swathbook.plan.DemoCopy;
import org.swathbook.program.Dose;

/** Each wish by itself, and all of them in words. */
class WishesTest {
  private static final Book BOOK = DemoCopy.inMemory();
  private static final IngredientId DICAMBA = IngredientId.of("dicamba");
  private static final IngredientId ATRAZINE = IngredientId.of("atrazine");
  private static final IngredientId MESOTRIONE = IngredientId.of("mesotrione");

  /** In corn, where all of them may be sprayed. */
  private static final List<DoseOption> OPTIONS =
      OptionMaker.make(BOOK, BOOK.findField("ND-2").orElseThrow()).options();

  private static Dose dose(IngredientId active) {
    return OPTIONS.stream()
        .filter(o -> o.ingredient().equals(active))
        .findFirst()
        .orElseThrow()
        .dose();
  }

  private static <T extends Comparable<T>> SortedSet<T> set(List<T> all) {
    return new TreeSet<>(all);
  }

  private static PlanWishes without(
      List<IngredientId> actives, List<ProductId> products, List<Site> sites) {
    return new PlanWishes(
        set(actives),
        set(products),
        set(sites),
        new TreeSet<>(),
        Optional.empty(),
        OptionalInt.empty());
  }

  @Test
  void whatIsLeftOutIsNotAllowedAndTheRestIs() {
    ProductId product = dose(ATRAZINE).product().id();
    PlanWishes active = without(List.of(DICAMBA), List.of(), List.of());
    PlanWishes sold = PlanWishes.NONE.withoutAll(List.of(product));
    PlanWishes site = without(List.of(), List.of(), List.of(Site.of(27)));
    assertThat(List.of(DICAMBA, ATRAZINE, MESOTRIONE))
        .allMatch(a -> PlanWishes.NONE.allows(dose(a)));
    assertThat(active.allows(dose(DICAMBA))).isFalse();
    assertThat(active.allows(dose(ATRAZINE))).isTrue();
    assertThat(sold.allows(dose(ATRAZINE))).isFalse();
    assertThat(sold.allows(dose(DICAMBA))).isTrue();
    assertThat(site.allows(dose(MESOTRIONE))).isFalse();
    assertThat(site.allows(dose(ATRAZINE))).isTrue();
  }

  @Test
  void whatIsAskedForAndNotUsedIsMissing() {
    PlanWishes two = PlanWishes.NONE.including(DICAMBA).including(ATRAZINE);
    assertThat(two.include()).containsExactlyInAnyOrder(DICAMBA, ATRAZINE);
    assertThat(two.missing(Set.of())).isEqualTo(2);
    assertThat(two.missing(Set.of(ATRAZINE, MESOTRIONE))).isEqualTo(1);
    assertThat(two.missing(Set.of(ATRAZINE, DICAMBA))).isZero();
    assertThat(PlanWishes.NONE.missing(Set.of())).isZero();
  }

  @Test
  void oneWishMoreLeavesTheOthers() {
    ProductId product = dose(ATRAZINE).product().id();
    PlanWishes all =
        new PlanWishes(
            set(List.of(DICAMBA)),
            set(List.of(Site.of(27))),
            set(List.of(ATRAZINE)),
            Optional.of(Money.ofDollars(80)),
            OptionalInt.of(1));
    PlanWishes more = all.withoutAll(List.of(product)).including(MESOTRIONE);
    assertThat(more)
        .isEqualTo(
            new PlanWishes(
                set(List.of(DICAMBA)),
                set(List.of(product)),
                set(List.of(Site.of(27))),
                set(List.of(ATRAZINE, MESOTRIONE)),
                Optional.of(Money.ofDollars(80)),
                OptionalInt.of(1)));
    assertThat(more.words(BOOK.catalog(), BOOK.house()))
        .containsExactly(
            "without dicamba",
            "without " + product,
            "without site 27",
            "with atrazine",
            "with mesotrione",
            "at most $80.00 an acre for products and passes",
            "at most 1 pass");
    assertThat(PlanWishes.NONE.words(BOOK.catalog(), BOOK.house())).isEmpty();
    PlanWishes twice =
        new PlanWishes(
            new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), Optional.empty(), OptionalInt.of(2));
    assertThat(twice.words(BOOK.catalog(), BOOK.house())).containsExactly("at most 2 passes");
    assertThat(twice.words(BOOK.catalog(), BOOK.house().laidOut(1, 4, 7)))
        .containsExactly("at most 2 passes, of which the house allows 1 (maxPasses)");
  }
}
