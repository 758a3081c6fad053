package org.swathbook.plan;

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

/**
 * The exact search on fields drawn at random, held against every program that can be made of the
 * passes drawn: the same program to the cent, by the same order where several come to the same. It
 * gives one best program and no front, so there is no front to compare.
 */
class EveryProgramProperties {
  private static final int MOST_PASSES = 8;
  private static final int LISTS_OF_PASSES = 8;

  private static final Book DEMO = DemoCopy.inMemory();

  @Property(tries = 10)
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
      if (!stops.isEmpty()) {
        compare(small, stops, random);
      }
    }
  }

  private static void compare(SmallBook small, List<Stop> stops, Random random) {
    FieldEvaluator evaluator = small.evaluator(stops);
    int mostPasses = small.space().maxPasses();
    List<Draft> drafts = EveryProgram.of(stops, mostPasses);
    List<Walked> meeting =
        drafts.stream()
            .filter(evaluator::legal)
            .map(evaluator::full)
            .filter(Walked::meetsHouseRules)
            .sorted(Goal.BEST)
            .toList();
    Optional<Walked> known =
        meeting.isEmpty() || random.nextBoolean()
            ? Optional.empty()
            : Optional.of(meeting.get(random.nextInt(meeting.size())));
    Set<Pruning> prunings = EnumSet.allOf(Pruning.class);
    if (random.nextBoolean()) {
      prunings.remove(List.copyOf(prunings).get(random.nextInt(prunings.size())));
    }

    ExactSearch.Result found =
        new ExactSearch(
                new Candidates(small.book, evaluator.kernel(), small.space(), stops),
                small.book.house(),
                mostPasses,
                evaluator,
                prunings,
                Long.MAX_VALUE)
            .run(known);

    assertThat(found.exact()).isTrue();
    assertThat(found.best().map(Walked::draft))
        .isEqualTo(meeting.stream().findFirst().map(Walked::draft));
    assertThat(found.best().map(Walked::net))
        .isEqualTo(meeting.stream().findFirst().map(Walked::net));
    Statistics.label("some program meets the house rules").collect(!meeting.isEmpty());
    Statistics.label("a cap, a count, an interval or the budget binds")
        .collect(drafts.stream().anyMatch(d -> !evaluator.legal(d)));
    Statistics.label("several programs have the highest net return")
        .collect(meeting.size() > 1 && meeting.get(0).net().equals(meeting.get(1).net()));
    Statistics.label("programs scored of all").collect(tenths(found.scored(), drafts.size()));
  }

  private static String tenths(long part, int whole) {
    return (10 * part / whole) * 10 + " %";
  }
}
