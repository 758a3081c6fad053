package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.book.Book;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.Drawn;
import org.swathbook.plan.DrawnPrograms;
import org.swathbook.plan.SmallBook;
import org.swathbook.plan.draft.Delay;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/**
 * The exact search on fields drawn at random, held against every program that can be made of the
 * passes drawn: for each of its aims the same program to the cent, by the same order where several
 * come to the same, and cut short a bound that the best one keeps; the front has a class of its own
 * ({@link EveryFrontProperties}).
 */
class EveryProgramProperties {
  private static final int MOST_PASSES = 8;
  private static final int LISTS_OF_PASSES = 8;

  private static final Book DEMO = DemoCopy.inMemory();

  @Property(tries = 30)
  void noProgramIsBetterThanTheOneFound(@ForAll long seed) {
    compare(seed);
  }

  @Property(tries = 400)
  @Tag("slow")
  void noneOfThousandsIsBetter(@ForAll long seed) {
    compare(seed);
  }

  private static void compare(long seed) {
    SmallBook small = SmallBook.draw(DEMO, seed);
    Random random = new Random(seed);
    for (int list = 0; list < LISTS_OF_PASSES; list++) {
      List<Stop> stops = small.passes(MOST_PASSES);
      if (stops.isEmpty()) {
        Drawn.something(false);
      } else {
        compare(new DrawnPrograms(small, stops, random), random);
      }
    }
  }

  private static void compare(DrawnPrograms drawn, Random random) {
    Drawn.something(!drawn.stops.isEmpty());
    if (drawn.stops.isEmpty()) {
      return;
    }
    SmallBook small = drawn.small;
    List<Stop> stops = drawn.stops;
    List<Stop> made = drawn.made;
    FieldEvaluator evaluator = drawn.evaluator;
    int mostPasses = small.space().maxPasses();
    List<Draft> drafts = drawn.drafts;
    List<Walked> walked = drawn.walked();
    Delay delay = new Delay(small.space(), evaluator);
    Candidates candidates = new Candidates(small.book, evaluator, small.space(), stops);
    Aim other =
        switch (random.nextInt(5)) {
          case 0 -> Aim.CHEAPEST;
          case 1 -> Aim.LEAST_HURT_BY_DELAY;
          case 2 -> Aim.HOUSE_RULES_ASIDE;
          case 3 -> Aim.LEAST_BAD;
          default ->
              Aim.loosening(HouseRuleCheck.NAMES.get(random.nextInt(HouseRuleCheck.NAMES.size())));
        };
    for (Aim aim : List.of(Aim.BEST, other)) {
      List<Walked> fit = walked.stream().filter(aim::allows).sorted(aim.order(delay)).toList();
      Optional<Walked> known =
          fit.isEmpty() || random.nextBoolean()
              ? Optional.empty()
              : Optional.of(fit.get(random.nextInt(fit.size())));
      Set<Pruning> prunings = EnumSet.allOf(Pruning.class);
      if (random.nextBoolean()) {
        prunings.remove(List.copyOf(prunings).get(random.nextInt(prunings.size())));
      }
      ExactSearch.Result found =
          search(small, aim, candidates, mostPasses, evaluator, delay, prunings, Long.MAX_VALUE)
              .run(known);

      assertThat(found.exact()).isTrue();
      assertThat(found.best().map(Walked::draft))
          .as("%s", aim)
          .isEqualTo(fit.stream().findFirst().map(Walked::draft));
      assertThat(found.best().map(Walked::net))
          .isEqualTo(fit.stream().findFirst().map(Walked::net));
      if (aim.equals(Aim.BEST)) {
        long budget = (long) (random.nextDouble() * found.scored());
        ExactSearch.Result cut =
            search(
                    small,
                    aim,
                    candidates,
                    mostPasses,
                    evaluator,
                    delay,
                    EnumSet.allOf(Pruning.class),
                    budget)
                .run(known);
        found.best().ifPresent(b -> assertThat(b.net().dollars()).isLessThanOrEqualTo(most(cut)));
        Statistics.label("some program meets the house rules").collect(!fit.isEmpty());
        Statistics.label("several programs have the highest net return")
            .collect(fit.size() > 1 && fit.get(0).net().equals(fit.get(1).net()));
        Statistics.label("programs scored of all").collect(tenths(found.scored(), drafts.size()));
        Statistics.label("with a budget the best was not seen")
            .collect(!cut.best().equals(found.best()));
      } else {
        Statistics.label("some program for the other aim").collect(!fit.isEmpty());
      }
    }
    Statistics.label("a cap, a count, an interval or the budget binds")
        .collect(drafts.stream().anyMatch(d -> !evaluator.legal(d)));
    Statistics.label("a pass is made already").collect(!made.isEmpty());
  }

  private static ExactSearch search(
      SmallBook small,
      Aim aim,
      Candidates candidates,
      int mostPasses,
      FieldEvaluator evaluator,
      Delay delay,
      Set<Pruning> prunings,
      long mostScored) {
    return new ExactSearch(
        aim, candidates, small.book.house(), mostPasses, evaluator, delay, prunings, mostScored);
  }

  /** What the best program is worth at most after a search that was cut short. */
  private static double most(ExactSearch.Result cut) {
    double seen = cut.best().map(w -> w.net().dollars()).orElse(Double.NEGATIVE_INFINITY);
    return Math.max(seen, cut.mostLeft());
  }

  private static String tenths(long part, int whole) {
    return (10 * part / whole) * 10 + " %";
  }
}
