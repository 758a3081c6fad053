package org.swathbook.plan.climb;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.check.ProgramJudge;
import org.swathbook.growth.TraceSet;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.PlanGround;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.HouseDeficit;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;
import org.swathbook.rules.Verdict;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * The search on one field of the demo book, held against a look at every program of a small shape.
 */
class SearchTest {
  private static Book book;
  private static TraceSet traces;
  private static PlanSpace space;
  private static FieldEvaluator evaluator;
  private static Search search;

  @BeforeAll
  static void prepare(@TempDir Path folder) {
    book = new DemoCopy(folder.resolve("book")).load();
    PlanGround ground = new PlanGround(book, "QH-3");
    traces = ground.traces;
    space = ground.space;
    evaluator = ground.evaluator;
    search = ground.search();
    for (Draft start : ground.starts.all()) {
      search.climb(start, space.maxPasses());
    }
  }

  @Test
  void noProgramOfOnePassAndTwoDosesServesTheGoalBetter() {
    double best = search.walked().stream().mapToDouble(Goal::of).max().orElseThrow();
    List<String> better = new ArrayList<>();
    for (int date = 0; date < space.grid().size(); date++) {
      List<Integer> legal = space.legalOn(date);
      for (int a : legal) {
        for (int b : legal) {
          if (a < b && !space.sameActive(a, b)) {
            Draft d = Draft.EMPTY.with(new Stop(date, List.of(a, b)));
            if (evaluator.legal(d)
                && evaluator.quick(d) > best
                && Goal.of(evaluator.full(d)) > best) {
              better.add(d.key());
            }
          }
        }
      }
    }
    assertThat(better).isEmpty();
  }

  @Test
  void theQuickScoreIsTheWalkedNetReturnLessTheFineForDriverWeeds() {
    int seen = 0;
    for (Walked w : search.walked()) {
      double fine = 0;
      for (var o : w.outcome().weeds()) {
        if (o.pressure().driver().isDriver()) {
          fine += 3 * Math.max(0, 100 * book.house().seasonControl() - o.controlPct());
        }
      }
      assertThat(evaluator.quick(w.draft()))
          .isCloseTo(w.net().dollars() - fine, Offset.offset(0.02));
      seen++;
    }
    assertThat(seen).isGreaterThan(50);
  }

  @Test
  void theQuickGoalTakesControlAndExposureOffAndIsNeverBelowTheGoal() {
    Set<String> told = Set.of(HouseRuleCheck.SEASON_CONTROL, HouseRuleCheck.MAX_EXPOSED_EMERGENCE);
    double asked = 100 * book.house().oneSiteGone();
    int fined = 0;
    for (Walked w : search.walked()) {
      Set<String> rules = new TreeSet<>(w.brokenNames());
      rules.retainAll(told);
      double deficit =
          HouseDeficit.of(w.broken().stream().filter(b -> told.contains(b.name())).toList());
      for (var o : w.outcome().weeds()) {
        if (o.pressure().driver().isDriver() && o.controlPct() < asked) {
          // With a site gone it is lower still.
          rules.add(HouseRuleCheck.ONE_SITE_GONE);
          deficit += (asked - o.controlPct()) / 10;
        }
      }
      double quick = evaluator.quickGoal(w.draft());
      assertThat(quick)
          .as(w.toString())
          .isCloseTo(w.net().dollars() - 400 * rules.size() - 60 * deficit, Offset.offset(0.02))
          .isGreaterThanOrEqualTo(Goal.of(w) - 0.02);
      fined += rules.isEmpty() ? 0 : 1;
    }
    assertThat(fined).isGreaterThan(50).isLessThan(search.walked().size());
  }

  /** What only a walk tells is what a site gone does: all else is in the goal already. */
  @Test
  void theGoalIsThatOfTheWalkUnlessASiteGoneDecides() {
    int sites = 0;
    for (Walked w : search.walked()) {
      double goal = evaluator.goal(w.draft());
      assertThat(goal).as(w.toString()).isGreaterThanOrEqualTo(Goal.of(w) - 0.02);
      if (!w.brokenNames().contains(HouseRuleCheck.ONE_SITE_GONE)) {
        assertThat(goal).as(w.toString()).isCloseTo(Goal.of(w), Offset.offset(0.02));
      }
      sites += goal < evaluator.quickGoal(w.draft()) - 1 ? 1 : 0;
    }
    assertThat(sites).as("programs that miss sites, overlaps or windows").isGreaterThan(50);
  }

  @Test
  void theFirstByTheGoalAreThoseOfAllSortedByIt() {
    List<Draft> drafts = search.walked().stream().map(Walked::draft).toList();
    List<Draft> sorted = Search.inOrder(drafts, evaluator::goal);
    for (int many : new int[] {1, 7, drafts.size() + 1}) {
      assertThat(search.topByGoal(drafts, many))
          .isEqualTo(sorted.subList(0, Math.min(many, sorted.size())));
    }
  }

  /** One more pass is tried in the end, too, so that no climb stops below it. */
  @Test
  void aClimbThatTriesOneMorePassLastStillTriesIt() {
    PlanGround ground = new PlanGround(book, "QH-3");
    Search last = ground.search(new Steps(4, 0.1, false));
    Draft start = Draft.EMPTY.with(new Stop(0, List.of(space.legalOn(0).get(0))));
    Walked top = last.climb(start, space.maxPasses()).orElseThrow();
    assertThat(top.draft().stops()).hasSizeGreaterThan(1);
    double best =
        ground.starts.withOneMorePass(top.draft(), 15).stream()
            .filter(d -> d.stops().size() <= space.maxPasses())
            .flatMap(d -> last.walk(d).stream())
            .mapToDouble(Goal::of)
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
    assertThat(best).isLessThan(Goal.of(top) + 0.1);
  }

  @Test
  void whatTheMasksAllowNoRuleBlocks() {
    int judged = 0;
    for (Walked w : search.walked()) {
      if (judged++ % 10 == 0 && !w.draft().stops().isEmpty()) {
        SeasonOutcome season = SeasonWalk.walk(book, traces, space.program(w.draft(), "walked"));
        assertThat(
                ProgramJudge.judge(book, traces, season, java.time.LocalDate.of(2026, 11, 25))
                    .verdict())
            .as(w.draft().key())
            .isNotEqualTo(Verdict.BLOCKED);
        assertThat(season.net()).isEqualTo(Optional.of(w.net()));
      }
    }
    assertThat(judged).isGreaterThan(50);
  }

  @Test
  void aClimbNeverEndsBelowItsStart() {
    Draft start = Draft.EMPTY.with(new Stop(0, List.of(space.legalOn(0).get(0))));
    Walked before = search.walk(start).orElseThrow();
    Walked after = search.climb(start, 1).orElseThrow();
    assertThat(Goal.of(after)).isGreaterThanOrEqualTo(Goal.of(before));
    assertThat(after.draft().stops().size()).isLessThanOrEqualTo(1);
  }
}
