package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.book.Book;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.EveryProgram;
import org.swathbook.plan.PlanGround;
import org.swathbook.plan.climb.Search;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/** The exact search held against a look at every program that can be made of some passes. */
class ExactSearchProperties {
  private static final int MOST_PASSES = 3;
  private static final long UNBOUNDED = Long.MAX_VALUE;
  private static final double NOTHING = Double.NEGATIVE_INFINITY;

  /** A field, and passes of the best programs that a few climbs met. */
  record Ground(Book book, PlanSpace space, FieldEvaluator evaluator, List<Stop> stops) {}

  /** Some of the passes of a ground. */
  record Task(Ground ground, List<Stop> stops) {}

  private static final Map<String, Ground> GROUNDS = new ConcurrentHashMap<>();

  private static Ground ground(String name) {
    return GROUNDS.computeIfAbsent(name, ExactSearchProperties::make);
  }

  private static Ground make(String name) {
    PlanGround ground = new PlanGround(DemoCopy.inMemory(), name);
    Search search = ground.search();
    ground.starts.all().stream().limit(4).forEach(s -> search.climb(s, ground.space.maxPasses()));
    Set<Stop> stops = new LinkedHashSet<>();
    search.walked().stream()
        .sorted(Goal.BEST)
        .limit(60)
        .forEach(w -> stops.addAll(w.draft().stops()));
    return new Ground(
        ground.book, ground.space, ground.evaluator, stops.stream().limit(40).toList());
  }

  @Provide
  Arbitrary<Task> tasks() {
    return Arbitraries.of("ND-4", "OB-1", "QH-1")
        .map(ExactSearchProperties::ground)
        .flatMap(
            g ->
                Combinators.combine(
                        Arbitraries.of(g.stops().subList(0, Math.min(8, g.stops().size())))
                            .set()
                            .ofMinSize(2)
                            .ofMaxSize(4),
                        Arbitraries.of(g.stops()).set().ofMinSize(2).ofMaxSize(7))
                    .as(
                        (best, others) -> {
                          Set<Stop> all = new LinkedHashSet<>(best);
                          all.addAll(others);
                          return new Task(g, List.copyOf(all));
                        }));
  }

  @Property(tries = 60)
  void noProgramMadeOfThePassesIsBetter(@ForAll("tasks") Task task) {
    ExactSearch.Result found = search(task, EnumSet.allOf(Pruning.class), UNBOUNDED);
    assertThat(found.exact()).isTrue();
    Optional<Walked> best = bestOfAll(task);
    assertThat(found.best().map(Walked::draft)).isEqualTo(best.map(Walked::draft));
    Statistics.label("some program meets the house rules")
        .collect(best.isPresent())
        .coverage(c -> c.check(true).percentage(p -> p >= 20));
  }

  private static final List<Aim> AIMS =
      List.of(
          Aim.BEST,
          Aim.CHEAPEST,
          Aim.LEAST_HURT_BY_DELAY,
          Aim.HOUSE_RULES_ASIDE,
          Aim.LEAST_BAD,
          Aim.loosening(HouseRuleCheck.MIN_FOLIAR_SITES));

  @Provide
  Arbitrary<Aim> aims() {
    return Arbitraries.of(AIMS);
  }

  @Property(tries = 20)
  void eachPruningSwitchedOffChangesNothing(@ForAll("tasks") Task task, @ForAll("aims") Aim aim) {
    switchOff(task, aim);
  }

  @Property(tries = 2000)
  @Tag("slow")
  void thousandsOfTimesEachPruningSwitchedOffChangesNothing(
      @ForAll("tasks") Task task, @ForAll("aims") Aim aim) {
    switchOff(task, aim);
  }

  private static void switchOff(Task task, Aim aim) {
    ExactSearch.Result all = search(aim, task, EnumSet.allOf(Pruning.class), UNBOUNDED);
    for (Pruning off : Pruning.values()) {
      ExactSearch.Result without =
          search(aim, task, EnumSet.complementOf(EnumSet.of(off)), UNBOUNDED);
      assertThat(without.exact()).isTrue();
      assertThat(without.best().map(Walked::draft)).isEqualTo(all.best().map(Walked::draft));
    }
  }

  @Property(tries = 20)
  void aProofCutShortIsNotCalledOne(@ForAll("tasks") Task task) {
    ExactSearch.Result whole = search(task, EnumSet.noneOf(Pruning.class), UNBOUNDED);
    ExactSearch.Result cut = search(task, EnumSet.noneOf(Pruning.class), whole.scored() - 1);
    assertThat(whole.exact()).isTrue();
    assertThat(cut.exact()).isFalse();
  }

  /** A program that was not looked at is worth no more than is said. */
  @Property(tries = 40)
  void whereTheProofIsGivenUpTheBestIsWithinTheGap(
      @ForAll("tasks") Task task, @ForAll @IntRange(min = 0, max = 99) int percent) {
    ExactSearch.Result whole = search(task, EnumSet.allOf(Pruning.class), UNBOUNDED);
    long budget = whole.scored() * percent / 100;
    ExactSearch.Result cut = search(task, EnumSet.allOf(Pruning.class), budget);
    assertThat(cut.scored()).isLessThanOrEqualTo(budget + 1);
    assertThat(cut.mostLeft() == NOTHING).isEqualTo(cut.exact());
    whole
        .best()
        .ifPresent(
            best -> {
              double seen = cut.best().map(w -> w.net().dollars()).orElse(NOTHING);
              assertThat(best.net().dollars()).isLessThanOrEqualTo(Math.max(seen, cut.mostLeft()));
            });
    Statistics.label("the best was not seen, and lies within the gap")
        .collect(whole.best().isPresent() && !whole.best().equals(cut.best()));
  }

  private static ExactSearch.Result search(Task task, Set<Pruning> prunings, long mostScored) {
    return search(Aim.BEST, task, prunings, mostScored);
  }

  private static ExactSearch.Result search(
      Aim aim, Task task, Set<Pruning> prunings, long mostScored) {
    Ground g = task.ground();
    Candidates candidates = new Candidates(g.book(), g.evaluator(), g.space(), task.stops());
    return new ExactSearch(
            aim,
            candidates,
            g.book().house(),
            MOST_PASSES,
            g.evaluator(),
            new Delay(g.space(), g.evaluator()),
            prunings,
            mostScored)
        .run(Optional.empty());
  }

  private static Optional<Walked> bestOfAll(Task task) {
    return EveryProgram.of(task.stops(), MOST_PASSES).stream()
        .filter(task.ground().evaluator()::legal)
        .map(task.ground().evaluator()::full)
        .filter(Walked::meetsHouseRules)
        .min(Goal.BEST);
  }
}
