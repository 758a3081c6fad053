package org.swathbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.plan.climb.Search;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.Walked;
import org.swathbook.plan.exact.Front;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;

/** What more money buys and why each part is there, on a field under three weather years. */
class FrontTest {
  private static Book book;
  private static PlanGround ground;
  private static Search search;
  private static FieldPlan plan;

  @BeforeAll
  static void planOnce(@TempDir Path dir) {
    book = new DemoCopy(dir.resolve("book")).load();
    ground = new PlanGround(book, "ND-4");
    search = ground.search();
    search.climb(Draft.EMPTY, 2);
    plan = new Planner(book).plan(ground.traces.field(), LocalDate.of(2026, 11, 20));
  }

  private static boolean isNoWorse(FrontProgram a, Walked b) {
    return a.cost().compareTo(b.cost()) <= 0
        && a.loss().compareTo(b.outcome().loss()) <= 0
        && Math.floor(a.weakestControlPct() / 5)
            >= Math.floor(
                b.outcome().weeds().stream()
                        .filter(w -> w.pressure().driver().isDriver())
                        .mapToDouble(w -> w.controlPctWithoutWeakest())
                        .min()
                        .orElse(100)
                    / 5);
  }

  private static boolean isOf(FrontProgram f, Walked w) {
    return f.cost().equals(w.cost())
        && f.loss().equals(w.outcome().loss())
        && f.net().equals(w.outcome().net())
        && f.passes().stream()
            .map(FrontProgram.Trip::planned)
            .toList()
            .equals(w.outcome().passes().stream().map(p -> p.planned()).toList());
  }

  @Test
  void everyProgramMetIsBeatenByTheFrontOrOnItAndNoneOfTheFrontBeatsAnother() {
    List<Walked> walked = search.walked();
    List<FrontProgram> front = Front.of(walked).stream().map(FrontProgram::of).toList();
    assertThat(walked).hasSizeGreaterThan(20);
    assertThat(front).hasSizeBetween(2, walked.size() - 1);
    for (Walked w : walked) {
      assertThat(front).anyMatch(f -> isNoWorse(f, w));
      long equalOrBetter = front.stream().filter(f -> isNoWorse(f, w)).count();
      if (front.stream().anyMatch(f -> isOf(f, w))) {
        assertThat(equalOrBetter).isEqualTo(1);
      }
    }
    List<FrontProgram> again = new ArrayList<>(front);
    again.sort(Comparator.comparing(FrontProgram::cost));
    assertThat(front).isEqualTo(again);
  }

  @Test
  void eachPartIsLeftOutInTurnAndWhatFollowsIsThatOfTheSeason() {
    SeasonOutcome first = plan.programs().get(0).outcome();
    List<Pass> passes = first.program().passes();
    int parts =
        passes.stream()
            .map(Pass::mix)
            .mapToInt(m -> m.doses().size() > 1 ? 1 + m.doses().size() : 1)
            .sum();
    assertThat(plan.without()).hasSize(parts);
    Kernel kernel = Kernel.of(book, plan.traces());
    for (WithoutPart w : plan.without()) {
      List<Pass> rest = new ArrayList<>(passes);
      Pass pass = passes.get(w.pass());
      if (w.dose().isPresent()) {
        Mix mix = pass.mix();
        rest.set(
            w.pass(),
            new Pass(
                pass.at(),
                new Mix(
                    mix.doses().stream().filter(d -> !d.equals(w.dose().get())).toList(),
                    mix.adjuvants(),
                    mix.gallonsPerAcre())));
      } else {
        rest.remove(pass);
      }
      SeasonOutcome outcome =
          SeasonWalk.walk(book, kernel, new Program("rest", first.program().field(), rest));
      assertThat(w.net()).contains(outcome.net().orElseThrow().minus(first.net().orElseThrow()));
      w.worstHit()
          .ifPresent(
              weed -> {
                assertThat(w.controlPctWithout()).isEqualTo(outcome.weed(weed).controlPct());
                assertThat(w.controlPct())
                    .isEqualTo(first.weed(weed).controlPct())
                    .isGreaterThan(w.controlPctWithout());
              });
    }
    assertThat(plan.without()).anyMatch(w -> w.net().orElseThrow().cents() < 0);
  }

  @Test
  void theOneThatIsLeastHurtByDelayNetsNoLessThanTheBestWhenLate() {
    Delay delay = new Delay(ground.space, ground.evaluator);
    List<Walked> sorted = search.walked().stream().sorted(Goal.BEST).limit(10).toList();
    Walked least = delay.leastHurt(sorted).orElseThrow();
    assertThat(sorted).contains(least);
    for (Walked w : sorted) {
      assertThat(delay.net(least)).isGreaterThanOrEqualTo(delay.net(w));
    }
    Draft late =
        new Draft(least.draft().stops().stream().map(s -> s.on(s.date() + Delay.DAYS)).toList());
    assertThat(delay.net(least)).isEqualTo(ground.evaluator.full(late).net());
  }
}
