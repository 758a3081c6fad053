package org.swathbook.plan.climb;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.book.Book;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.Drawn;
import org.swathbook.plan.SmallBook;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/**
 * One more start, or climbing a start in the second way too, never leaves a worse program: each
 * climb meets what it would meet alone, whatever was climbed before.
 */
class MoreStartsProperties {
  private static final Book DEMO = DemoCopy.inMemory();
  private static final int MOST_CLIMBS = 4;
  private static final int MOST_PASSES = 2;

  /** A start and the way in which it is climbed. */
  private record Climb(Draft start, boolean earlyPosts) {
    Optional<Walked> by(Search search, int mostPasses) {
      return earlyPosts
          ? search.climbWithEarlyPosts(start, mostPasses)
          : search.climb(start, mostPasses);
    }
  }

  @Property(tries = 4)
  void oneMoreClimbNeverLosesTheBestProgram(@ForAll long seed) {
    climb(seed);
  }

  @Property(tries = 100)
  @Tag("slow")
  void noneOfHundredsOfClimbsLosesTheBestProgram(@ForAll long seed) {
    climb(seed);
  }

  private static void climb(long seed) {
    SmallBook small = SmallBook.draw(DEMO, seed);
    List<Stop> drawn = small.passes(4);
    Drawn.something(!drawn.isEmpty());
    if (drawn.isEmpty()) {
      return;
    }
    FieldEvaluator evaluator = small.evaluator(drawn, List.of());
    int mostPasses = Math.min(MOST_PASSES, small.space().maxPasses());
    Search all = small.search(evaluator);
    Optional<Walked> best = Optional.empty();
    for (Climb c : climbs(small.starts(evaluator).all(), drawn, new Random(seed))) {
      Search fresh = small.search(evaluator);
      Optional<Walked> alone = c.by(fresh, mostPasses);
      Optional<Walked> top = c.by(all, mostPasses);
      Optional<Walked> now = all.best();

      assertThat(top).isEqualTo(alone);
      assertThat(all.walked()).containsAll(fresh.walked());
      assertThat(now).isEqualTo(better(best, fresh.best()));
      Statistics.label("what one more climb does to the best program")
          .collect(
              now.equals(best) ? "nothing" : best.isEmpty() ? "the first one" : "a better one");
      best = now;
    }
  }

  private static Optional<Walked> better(Optional<Walked> a, Optional<Walked> b) {
    return a.isEmpty() || b.isPresent() && Goal.BEST.compare(b.get(), a.get()) < 0 ? b : a;
  }

  /** Some of the planner's starts and of any passes, each climbed in one way or in both. */
  private static List<Climb> climbs(List<Draft> starts, List<Stop> drawn, Random random) {
    List<Draft> from = new ArrayList<>(starts);
    drawn.forEach(s -> from.add(Draft.EMPTY.with(s)));
    List<Climb> out = new ArrayList<>();
    for (Draft d : from) {
      out.add(new Climb(d, false));
      out.add(new Climb(d, true));
    }
    Collections.shuffle(out, random);
    return out.subList(0, Math.min(MOST_CLIMBS, out.size()));
  }
}
