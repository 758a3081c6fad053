package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Pass;

/**
 * What an adviser asks of a plan is met by every program that is shown, or none is shown. A quick
 * look: what is asked narrows the choice before anything is searched, whatever the effort.
 */
class PlanWishesTest {
  private static final LocalDate TODAY = LocalDate.parse("2027-03-01");

  @TempDir static Path folder;
  private static Book book;

  /** The plan of which nothing is asked, made once. */
  private static FieldPlan unasked;

  @BeforeAll
  static void load() {
    book = new DemoCopy(folder.resolve("book")).load();
    unasked = plan(PlanWishes.NONE);
  }

  private static FieldPlan plan(PlanWishes wishes) {
    return new Planner(book, wishes, Effort.QUICK)
        .plan(book.findField("ND-1").orElseThrow(), TODAY);
  }

  private static PlanWishes wishes(
      Set<IngredientId> without,
      Set<Site> sites,
      Set<IngredientId> include,
      Optional<Money> budget,
      OptionalInt passes) {
    return new PlanWishes(
        new TreeSet<>(without), new TreeSet<>(sites), new TreeSet<>(include), budget, passes);
  }

  private static Set<IngredientId> actives(PlannedProgram p) {
    return passes(p)
        .flatMap(x -> x.mix().actives().stream())
        .map(a -> a.ingredient().id())
        .collect(Collectors.toSet());
  }

  private static Stream<Pass> passes(PlannedProgram p) {
    return p.outcome().program().passes().stream();
  }

  @Test
  void anActiveAndASiteAreLeftOut() {
    IngredientId flumioxazin = IngredientId.of("flumioxazin");
    FieldPlan plan =
        plan(
            wishes(
                Set.of(flumioxazin),
                Set.of(Site.of(15)),
                Set.of(),
                Optional.empty(),
                OptionalInt.empty()));

    assertThat(plan.programs()).isNotEmpty();
    assertThat(plan.programs())
        .allSatisfy(
            p -> {
              assertThat(actives(p)).doesNotContain(flumioxazin);
              assertThat(
                      passes(p)
                          .flatMap(x -> x.mix().actives().stream())
                          .map(a -> a.ingredient().site().number()))
                  .doesNotContain(15);
            });
  }

  /** Another product of the same active may stand in. */
  @Test
  void aProductThatCannotBeHadIsLeftOut() {
    ProductId flumioxazin = ProductId.of("flumioxazin-51wg");
    FieldPlan plan =
        plan(
            new PlanWishes(
                new TreeSet<>(),
                new TreeSet<>(Set.of(flumioxazin)),
                new TreeSet<>(),
                new TreeSet<>(),
                Optional.empty(),
                OptionalInt.empty()));

    assertThat(plan.programs()).isNotEmpty();
    assertThat(plan.programs())
        .flatMap(p -> passes(p).flatMap(x -> x.mix().doses().stream()).toList())
        .noneMatch(d -> d.product().id().equals(flumioxazin));
  }

  @Test
  void anActiveIsInEveryProgram() {
    IngredientId clethodim = IngredientId.of("clethodim");
    FieldPlan plan =
        plan(wishes(Set.of(), Set.of(), Set.of(clethodim), Optional.empty(), OptionalInt.empty()));

    assertThat(plan.programs()).isNotEmpty();
    assertThat(plan.programs()).allSatisfy(p -> assertThat(actives(p)).contains(clethodim));
  }

  @Test
  void budgetAndPassesBind() {
    Money budget = Money.ofDollars(40);
    FieldPlan plan =
        plan(wishes(Set.of(), Set.of(), Set.of(), Optional.of(budget), OptionalInt.of(1)));

    assertThat(plan.programs()).isNotEmpty();
    assertThat(plan.programs())
        .allSatisfy(
            p -> {
              assertThat(p.outcome().passes()).hasSize(1);
              assertThat(p.outcome().cost().orElseThrow().cents())
                  .isLessThanOrEqualTo(budget.cents());
            });
  }

  /** What a larger budget finds and a smaller one affords is found with the smaller one too. */
  @Test
  void aSmallerBudgetFindsWhatItAffords() {
    PlannedProgram larger = plan(budget(60)).programs().get(0);
    Money smaller = Money.ofDollars(52);
    assertThat(withEveryPass(larger)).isLessThanOrEqualTo(smaller);
    PlannedProgram found = plan(budget(52)).programs().get(0);

    assertThat(found.recommended()).isTrue();
    assertThat(withEveryPass(found)).isLessThanOrEqualTo(smaller);
    assertThat(found.outcome().net().orElseThrow())
        .isGreaterThanOrEqualTo(larger.outcome().net().orElseThrow());
  }

  private static PlanWishes budget(double dollars) {
    return wishes(
        Set.of(), Set.of(), Set.of(), Optional.of(Money.ofDollars(dollars)), OptionalInt.empty());
  }

  private static Money withEveryPass(PlannedProgram p) {
    Money sum = Money.ZERO;
    for (Pass pass : passes(p).toList()) {
      sum = sum.plus(book.passCost()).plus(book.prices().perAcre(pass.mix()).orElseThrow());
    }
    return sum;
  }

  /** Nothing costs so little that a trip is paid: no program, and no wrong one in its place. */
  @Test
  void whatCannotBeMetShowsNothing() {
    FieldPlan plan =
        plan(
            wishes(
                Set.of(),
                Set.of(),
                Set.of(),
                Optional.of(Money.ofDollars(1)),
                OptionalInt.empty()));

    assertThat(plan.programs()).isEmpty();
    assertThat(plan.refusal()).isPresent();
  }

  /** A season of programs costs less than $1000 an acre; atrazine kills the crop anyway. */
  @Test
  void whatBindsNothingChangesNothing() {
    FieldPlan loose =
        plan(
            wishes(
                Set.of(IngredientId.of("atrazine")),
                Set.of(),
                Set.of(),
                Optional.of(Money.ofDollars(1000)),
                OptionalInt.of(book.house().maxPasses())));

    assertThat(programs(loose)).containsExactlyElementsOf(programs(unasked));
  }

  private static List<String> programs(FieldPlan plan) {
    return plan.programs().stream().map(p -> p.outcome().program().toString()).toList();
  }

  /** Atrazine kills soybean, and the rule that says so is the answer. */
  @Test
  void whyNotNamesTheRuleOrTheBetterProgram() {
    FieldPlan plan = unasked;
    WhyNot.Asker asker = new WhyNot.Asker(book, PlanWishes.NONE, plan, Effort.QUICK, TODAY);
    WhyNot atrazine = asker.whyNot(active("atrazine"));

    assertThat(atrazine.inFirst()).isFalse();
    assertThat(atrazine.with()).isEmpty();
    assertThat(atrazine.blocks()).extracting(f -> f.rule().value()).contains("crop-not-listed");

    WhyNot used =
        asker.whyNot(book.catalog().ingredient(actives(plan.programs().get(0)).iterator().next()));
    assertThat(used.inFirst()).isTrue();
  }

  /** A program that nets more because it breaks a house rule was not missed by the search. */
  @Test
  void whatBreaksMoreHouseRulesIsNotBetterForNettingMore() {
    PlannedProgram first = unasked.programs().get(0);
    PlannedProgram aside =
        unasked.programs().stream()
            .filter(p -> p.name().equals(Named.ASIDE))
            .findFirst()
            .orElseThrow();

    assertThat(aside.outcome().net().orElseThrow().cents())
        .isGreaterThan(first.outcome().net().orElseThrow().cents());
    assertThat(WhyNot.isBetter(aside, first)).isFalse();
    assertThat(WhyNot.isBetter(first, aside)).isTrue();
    assertThat(WhyNot.isBetter(first, first)).isFalse();
  }

  private static Ingredient active(String name) {
    return book.catalog().findIngredient(name).orElseThrow();
  }
}
