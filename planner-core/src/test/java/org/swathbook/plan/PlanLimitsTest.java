package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Anchor;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.SharedKernels;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.testing.Restated;

/** What cannot be had within the limits of a plan, and which limit alone stands against it. */
class PlanLimitsTest {
  private static final LocalDate TODAY = LocalDate.parse("2027-03-01");
  private static final Book BOOK = DemoCopy.inMemory();

  private static PlanWishes with(Set<String> actives, Optional<Money> budget, OptionalInt passes) {
    TreeSet<IngredientId> include = new TreeSet<>();
    actives.forEach(a -> include.add(id(a)));
    return new PlanWishes(new TreeSet<>(), new TreeSet<>(), include, budget, passes);
  }

  private static IngredientId id(String name) {
    return BOOK.catalog().findIngredient(name).orElseThrow().id();
  }

  private static FieldPlan plan(Book book, PlanWishes wishes) {
    return new Planner(book, wishes, Effort.QUICK)
        .plan(book.findField("ND-1").orElseThrow(), TODAY);
  }

  private static List<LiftedLimit> limits(Book book, PlanWishes wishes) {
    return LiftedLimit.of(book, wishes, plan(book, wishes), Effort.QUICK, TODAY);
  }

  @Test
  void aPlanThatIsRecommendedAsksForNoLimitToBeLifted() {
    assertThat(limits(BOOK, PlanWishes.NONE)).isEmpty();
  }

  /** A house that has one product in a tank gets no program within its own rules. */
  @Test
  void limitsOfTheHouseAreLookedAtUnlessAFieldWithNothingAskedGotAQuickLook() {
    Book one = BOOK.with(Restated.with(BOOK.house(), "maxProducts", 1));
    FieldPlan plan = plan(one, PlanWishes.NONE);

    assertThat(plan.programs().get(0).recommended()).isFalse();
    assertThat(LiftedLimit.of(one, PlanWishes.NONE, plan, Effort.QUICK, TODAY)).isEmpty();
    assertThat(LiftedLimit.of(one, PlanWishes.NONE, plan, Effort.USUAL, TODAY))
        .extracting(LiftedLimit::key)
        .contains("maxProducts");
  }

  /** Nothing costs so little; the nearest program costs less than the best, and both more. */
  @Test
  void aBudgetIsNamedWithTheLeastThatIsEnoughAndTheBest() {
    Money budget = Money.ofDollars(10);
    List<LiftedLimit> limits =
        limits(BOOK, with(Set.of(), Optional.of(budget), OptionalInt.empty()));

    assertThat(limits).extracting(LiftedLimit::key).containsOnly("--budget");
    assertThat(limits).extracting(LiftedLimit::best).containsExactly(false, true);
    assertThat(limits)
        .allSatisfy(
            l -> {
              assertThat(l.limit()).isEqualTo("at most $10.00 asked");
              assertThat(l.met()).endsWith(" an acre when every pass is made");
              assertThat(l.program().judgement().brokenNames()).isEmpty();
              assertThat(l.program().outcome().cost().orElseThrow()).isGreaterThan(budget);
            });
    assertThat(limits.get(0).program().outcome().cost().orElseThrow())
        .isLessThan(limits.get(1).program().outcome().cost().orElseThrow());
  }

  /** Five actives, one tank: two passes, one product more in a tank, or one active less. */
  @Test
  void eachLimitThatAloneHelpsIsNamed() {
    PlanWishes five =
        with(
            Set.of("paraquat", "metribuzin", "clethodim", "fomesafen", "flumioxazin"),
            Optional.empty(),
            OptionalInt.of(1));
    assertThat(plan(BOOK, five).programs()).isEmpty();
    List<LiftedLimit> limits = limits(BOOK, five);

    assertThat(limits)
        .extracting(LiftedLimit::key)
        .contains("--max-passes", "maxProducts", "--must-include paraquat")
        .doesNotContain("minDaysBetweenPasses", "maxPasses", "--budget");
    assertThat(limits)
        .filteredOn(l -> l.key().equals("maxProducts"))
        .allSatisfy(
            l -> {
              assertThat(l.limit()).isEqualTo("at most 4 asked");
              assertThat(l.met()).isEqualTo("pass 1: 5 products");
            });
    assertThat(limits)
        .filteredOn(l -> l.key().equals("--must-include paraquat"))
        .singleElement()
        .satisfies(l -> assertThat(actives(l.program())).doesNotContain(id("paraquat")));
  }

  /** Passes three days apart, in a program that was written so. */
  @Test
  void daysBetweenPassesAreNamedWithTheDaysMet() {
    PlanLimit days =
        PlanLimits.of(BOOK, PlanWishes.NONE).stream()
            .filter(l -> l.key().equals("minDaysBetweenPasses"))
            .findFirst()
            .orElseThrow();
    FieldPlan plan = plan(BOOK, PlanWishes.NONE);
    SeasonOutcome first = plan.programs().get(0).outcome();
    List<Pass> passes = first.program().passes();
    Program near =
        first
            .program()
            .with(
                List.of(
                    new Pass(new Anchor.FromPlanting(-9), passes.get(0).mix()),
                    new Pass(new Anchor.FromPlanting(-6), passes.get(1).mix())));
    SeasonOutcome walked =
        SeasonWalk.walk(
            BOOK, Kernel.of(BOOK, plan.traces(), new SharedKernels(BOOK.catalog())), near);

    assertThat(days.limit()).isEqualTo("at least 7 asked");
    assertThat(days.lifted().book().house().minDaysBetweenPasses()).isEqualTo(1);
    assertThat(days.lifted().book().house().maxPasses()).isEqualTo(BOOK.house().maxPasses());
    assertThat(days.beyond().applyAsDouble(first)).isZero();
    assertThat(days.beyond().applyAsDouble(walked)).isEqualTo(4);
    assertThat(days.met().apply(walked)).isEqualTo("3 days from 2 May 2027 to 5 May 2027");
  }

  /** What was left out is no rule's fault: the option is named, and no finding. */
  @Test
  void whyNotOfWhatIsLeftOutNamesTheOption() {
    TreeSet<IngredientId> without = new TreeSet<>(Set.of(id("clethodim")));
    PlanWishes wishes =
        new PlanWishes(
            without, new TreeSet<>(), new TreeSet<>(), Optional.empty(), OptionalInt.of(1));
    WhyNot why = whyNot(wishes, "clethodim");

    assertThat(why.with()).isEmpty();
    assertThat(why.blocks()).isEmpty();
    assertThat(why.limits()).extracting(LiftedLimit::key).containsOnly("--without clethodim");
    assertThat(why.limits().get(0).met()).startsWith("with clethodim-");
  }

  /** With one pass the plan does without what it uses with four. */
  @Test
  void whyNotNamesTheLimitWithoutWhichTheFirstProgramUsesIt() {
    PlannedProgram free = plan(BOOK, PlanWishes.NONE).programs().get(0);
    PlanWishes one = with(Set.of(), Optional.empty(), OptionalInt.of(1));
    PlannedProgram bound = plan(BOOK, one).programs().get(0);
    String kept =
        actives(free).stream()
            .filter(a -> !actives(bound).contains(a))
            .map(a -> BOOK.catalog().ingredient(a).name())
            .findFirst()
            .orElseThrow();
    WhyNot why = whyNot(one, kept);

    assertThat(why.inFirst()).isFalse();
    assertThat(why.limits()).extracting(LiftedLimit::key).contains("--max-passes");
    assertThat(why.limits()).allSatisfy(l -> assertThat(actives(l.program())).contains(id(kept)));
  }

  private static WhyNot whyNot(PlanWishes wishes, String active) {
    return new WhyNot.Asker(BOOK, wishes, plan(BOOK, wishes), Effort.QUICK, TODAY)
        .whyNot(BOOK.catalog().findIngredient(active).orElseThrow());
  }

  /** A label that refuses the crop is said before anything is searched, and nothing else is. */
  @Test
  void anActiveThatNoRuleAllowsIsRefusedWithThatRule() {
    FieldPlan plan = plan(BOOK, with(Set.of("atrazine"), Optional.empty(), OptionalInt.empty()));

    assertThat(plan.search().labels()).isZero();
    Refusal refusal = plan.refusal().orElseThrow();
    assertThat(refusal.isOfAsked()).isTrue();
    assertThat(refusal.because()).isNotEmpty();
    assertThat(refusal.because())
        .allSatisfy(
            f -> {
              assertThat(f.rule().value()).isEqualTo("crop-not-listed");
              assertThat(f.about().ingredient()).contains(id("atrazine"));
              assertThat(f.about().pass()).isEmpty();
            });
  }

  /**
   * Metribuzin goes on before soybean is up: on 26 May, with flumioxazin sprayed, it is too late.
   */
  @Test
  void anActiveWhoseDaysAreOverIsRefusedWithItsLastDay() {
    LocalDate late = LocalDate.parse("2027-05-26");
    Field field = BOOK.findField("ND-1").orElseThrow();
    PlanWishes wishes = with(Set.of("metribuzin"), Optional.empty(), OptionalInt.empty());
    FieldPlan plan = new Planner(BOOK, wishes, Effort.QUICK).plan(field, late);

    assertThat(plan.programs()).isEmpty();
    assertThat(plan.refusal().orElseThrow().because()).isEmpty();
    assertThat(plan.search().leftOut().get(0))
        .matches(
            "metribuzin-75wg: the last day on which the rules allow it here, \\d+ May 2027, is"
                + " over");
    FieldPlan unasked = new Planner(BOOK, PlanWishes.NONE, Effort.QUICK).plan(field, late);
    WhyNot why =
        new WhyNot.Asker(BOOK, PlanWishes.NONE, unasked, Effort.QUICK, late)
            .whyNot(BOOK.catalog().findIngredient("metribuzin").orElseThrow());
    assertThat(why.leftOut()).hasSize(1).isEqualTo(plan.search().leftOut().subList(0, 1));
  }

  /** Which products of the site are used is no more or less of what was asked. */
  @Test
  void aSiteThatIsLeftOutIsNamedOnce() {
    TreeSet<Site> sites = new TreeSet<>();
    for (int site : new int[] {1, 2, 3, 4, 5, 6, 9, 10, 13, 14, 15, 22, 27}) {
      sites.add(Site.of(site));
    }
    List<LiftedLimit> limits =
        limits(
            BOOK,
            new PlanWishes(
                new TreeSet<>(), sites, new TreeSet<>(), Optional.empty(), OptionalInt.empty()));

    assertThat(limits).extracting(LiftedLimit::key).contains("--without 'site 14'");
    assertThat(limits).extracting(LiftedLimit::key).doesNotHaveDuplicates();
  }

  private static Set<IngredientId> actives(PlannedProgram p) {
    Set<IngredientId> out = new TreeSet<>();
    p.outcome()
        .passes()
        .forEach(x -> x.mix().actives().forEach((ActiveDose a) -> out.add(a.ingredient().id())));
    return out;
  }
}
