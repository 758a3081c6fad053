package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.book.Book;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.Drawn;
import org.swathbook.plan.DrawnPrograms;
import org.swathbook.plan.SmallBook;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/**
 * The front of cost, loss and control with the worst site gone, searched for on fields drawn at
 * random, held against that of every program which can be made of the passes drawn: the very same
 * programs, whatever pruning is switched off and whatever programs are known before.
 */
class EveryFrontProperties {
  private static final int MOST_PASSES = 8;
  private static final int LISTS_OF_PASSES = 8;

  private static final Book DEMO = DemoCopy.inMemory();

  @Property(tries = 25)
  void theFrontIsThatOfEveryProgram(@ForAll long seed) {
    compareFronts(seed);
  }

  @Property(tries = 500)
  @Tag("slow")
  void thousandsOfFrontsAreThoseOfEveryProgram(@ForAll long seed) {
    compareFronts(seed);
  }

  private static void compareFronts(long seed) {
    SmallBook small = SmallBook.draw(DEMO, seed);
    Random random = new Random(seed);
    for (int list = 0; list < LISTS_OF_PASSES; list++) {
      List<Stop> stops = small.passes(MOST_PASSES);
      if (stops.isEmpty()) {
        Drawn.something(false);
      } else {
        compareFronts(new DrawnPrograms(small, stops, random), random);
      }
    }
  }

  private static void compareFronts(DrawnPrograms drawn, Random random) {
    Drawn.something(!drawn.stops.isEmpty());
    if (drawn.stops.isEmpty()) {
      return;
    }
    List<Walked> fit = drawn.walked().stream().filter(w -> w.lacking() == 0).toList();
    Set<Pruning> prunings = EnumSet.allOf(Pruning.class);
    if (random.nextBoolean()) {
      prunings.remove(List.copyOf(prunings).get(random.nextInt(prunings.size())));
    }
    List<Walked> known = new ArrayList<>(fit);
    Collections.shuffle(known, random);
    FrontSoFar front = new FrontSoFar();
    known.subList(0, random.nextInt(fit.size() + 1)).forEach(front::add);
    Candidates candidates =
        new Candidates(drawn.small.book, drawn.evaluator, drawn.small.space(), drawn.stops);
    int mostPasses = drawn.small.space().maxPasses();
    FrontSearch search =
        new FrontSearch(
            candidates, Set.of(), mostPasses, drawn.evaluator, front, prunings, Long.MAX_VALUE);

    assertThat(search.run()).isTrue();
    assertThat(Front.of(front.programs())).isEqualTo(Front.of(fit));
    assertThat(front.programs()).hasSameSizeAs(Front.of(fit));
    inTwoSteps(drawn, candidates, random, Front.of(fit));
    FrontSearch cut =
        new FrontSearch(
            candidates,
            Set.of(),
            mostPasses,
            drawn.evaluator,
            new FrontSoFar(),
            prunings,
            (long) (random.nextDouble() * drawn.drafts.size() / 4));
    boolean complete = cut.run();
    Statistics.label("several programs on the front").collect(front.programs().size() > 1);
    Statistics.label("several levels on it")
        .collect(
            front.programs().stream().map(w -> Front.levelOf(Front.weakest(w))).distinct().count()
                > 1);
    Statistics.label("programs and their sites scored of all programs")
        .collect(tenths(search.scored(), drawn.drafts.size()));
    Statistics.label("with a budget the proof is given up").collect(!complete);
  }

  /** First over some of the passes, then over what holds one of the others. */
  private static void inTwoSteps(
      DrawnPrograms drawn, Candidates all, Random random, List<Walked> expected) {
    List<Stop> shuffled = new ArrayList<>(drawn.stops);
    Collections.shuffle(shuffled, random);
    Set<Stop> first = Set.copyOf(shuffled.subList(0, random.nextInt(shuffled.size() + 1)));
    FrontSoFar front = new FrontSoFar();
    step(drawn, all.only(first), Set.of(), front);
    step(drawn, all, first, front);
    assertThat(Front.of(front.programs())).isEqualTo(expected);
  }

  private static void step(
      DrawnPrograms drawn, Candidates candidates, Set<Stop> settled, FrontSoFar front) {
    FrontSearch search =
        new FrontSearch(
            candidates,
            settled,
            drawn.small.space().maxPasses(),
            drawn.evaluator,
            front,
            EnumSet.allOf(Pruning.class),
            Long.MAX_VALUE);
    assertThat(search.run()).isTrue();
  }

  private static String tenths(long part, int whole) {
    return (10 * part / whole) * 10 + " %";
  }
}
