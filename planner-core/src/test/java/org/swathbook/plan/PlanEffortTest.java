package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.plan.draft.Draft;
import org.swathbook.season.SeasonWalk;

/** What more or less effort changes of a plan, and what it does not. */
class PlanEffortTest {
  private static final LocalDate TODAY = LocalDate.parse("2027-03-01");
  private static final PlanWishes ONE_PASS =
      new PlanWishes(
          new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), Optional.empty(), OptionalInt.of(1));

  @TempDir static Path folder;
  private static Book book;

  @BeforeAll
  static void load() {
    book = new DemoCopy(folder.resolve("book")).load();
  }

  private static FieldPlan plan(String field, PlanWishes wishes, Effort effort) {
    return new Planner(book, wishes, effort)
        .withCeiling()
        .plan(book.findField(field).orElseThrow(), TODAY);
  }

  @Test
  void aQuickLookScoresFewerProgramsAndTellsTheSameOfThoseItShows() {
    FieldPlan quick = plan("ND-4", PlanWishes.NONE, Effort.QUICK);
    FieldPlan usual = plan("ND-4", PlanWishes.NONE, Effort.USUAL);
    assertThat(quick.search().effort()).isEqualTo(Effort.QUICK);
    assertThat(usual.search().effort()).isEqualTo(Effort.USUAL);
    assertThat(quick.search().labels()).isLessThan(usual.search().labels());
    assertThat(quick.search().combined()).isEqualTo(Effort.QUICK.combined().passes());
    assertThat(quick.programs()).isNotEmpty();
    for (PlannedProgram p : quick.programs()) {
      assertThat(SeasonWalk.walk(book, quick.traces(), p.outcome().program()).net())
          .isEqualTo(p.outcome().net());
    }
  }

  @Test
  void thatNothingMeetsTheHouseRulesIsSaidOnlyAfterAllEffort() {
    FieldPlan quick = plan("QH-2", ONE_PASS, Effort.QUICK);
    FieldPlan usual = plan("QH-2", ONE_PASS, Effort.USUAL);
    FieldPlan thorough = plan("QH-2", ONE_PASS, Effort.THOROUGH);
    assertThat(quick.programs().get(0).recommended()).isFalse();
    assertThat(quick.search().effort()).isEqualTo(Effort.QUICK);
    assertThat(usual.programs().get(0).recommended()).isFalse();
    assertThat(usual.search().effort()).isEqualTo(Effort.THOROUGH);
    assertThat(broken(usual)).isLessThanOrEqualTo(broken(thorough));
  }

  /** Its own way alone would end on a lower hill here: the usual one is its first part. */
  @Test
  void allEffortNetsNoLessThanTheUsual() {
    FieldPlan usual = plan("ND-1", PlanWishes.NONE, Effort.USUAL);
    FieldPlan thorough = plan("ND-1", PlanWishes.NONE, Effort.THOROUGH);
    assertThat(usual.programs().get(0).recommended()).isTrue();
    assertThat(thorough.search().effort()).isEqualTo(Effort.THOROUGH);
    assertThat(net(thorough)).isGreaterThanOrEqualTo(net(usual));
    assertThat(usual.search().gapOfAll()).isEmpty();
    Money gapOfAll = thorough.search().gapOfAll().orElseThrow();
    assertThat(gapOfAll).isGreaterThanOrEqualTo(thorough.search().gap().orElseThrow());
    // Without a bound all that it costs and loses might be had.
    Money costsAndLoses =
        thorough
            .programs()
            .get(0)
            .outcome()
            .cost()
            .orElseThrow()
            .plus(thorough.programs().get(0).outcome().loss());
    assertThat(gapOfAll).isLessThan(costsAndLoses);
  }

  private static Money net(FieldPlan plan) {
    return plan.programs().get(0).outcome().net().orElseThrow();
  }

  private static int broken(FieldPlan plan) {
    return plan.programs().get(0).judgement().brokenHouseRules().size();
  }

  @Test
  void climbsBeginWithTheStartsThatScoreBest() {
    PlanGround ground = new PlanGround(book, "ND-4");
    List<Draft> all = ground.starts.all();
    List<Draft> best = ground.starts.best(3);
    assertThat(ground.starts.best(all.size())).isEqualTo(all);
    assertThat(best).hasSize(3);
    double least = best.stream().mapToDouble(ground.evaluator::quickGoal).min().orElseThrow();
    assertThat(all)
        .filteredOn(d -> !best.contains(d))
        .allMatch(d -> ground.evaluator.quickGoal(d) <= least);
  }
}
