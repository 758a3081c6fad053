package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.book.Book;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.DrawnPrograms;
import org.swathbook.plan.SmallBook;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Stop;
import org.swathbook.season.ExposureBounds;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;

/** What first passes leave exposed whatever follows: never more than programs of theirs do. */
class ExposureBoundsProperties {
  private static final int MOST_PASSES = 8;
  private static final int PROGRAMS = 20;
  private static final double ROUNDING = 1e-8;

  private static final Book DEMO = DemoCopy.inMemory();

  @Property(tries = 20)
  void noFurtherPassesLeaveLessExposed(@ForAll long seed) {
    compare(seed);
  }

  @Property(tries = 1000)
  @Tag("slow")
  void noneOfThousandsLeavesLessExposed(@ForAll long seed) {
    compare(seed);
  }

  private static void compare(long seed) {
    SmallBook small = SmallBook.draw(DEMO, seed);
    Random random = new Random(seed);
    List<Stop> stops = small.passes(MOST_PASSES);
    if (stops.isEmpty()) {
      return;
    }
    DrawnPrograms drawn = new DrawnPrograms(small, stops, random);
    Candidates candidates = new Candidates(small.book, drawn.evaluator, small.space(), drawn.stops);
    Kernel kernel = candidates.kernel();
    List<Integer> weeds = IntStream.range(0, kernel.traces().weeds().size()).boxed().toList();
    ExposureBounds bounds = ExposureBounds.of(kernel, candidates.withMade(), weeds);
    for (int i = 0; i < PROGRAMS && !drawn.drafts.isEmpty(); i++) {
      Draft draft = drawn.drafts.get(random.nextInt(drawn.drafts.size()));
      List<PreparedPass> passes = new ArrayList<>(candidates.start().prepared());
      draft.stops().forEach(s -> passes.add(drawn.evaluator.prepare(s)));
      Score score = kernel.score(passes);
      int first = random.nextInt(passes.size() + 1);
      for (int w : weeds) {
        ExposureBounds.Exposed all = bounds.least(passes, w, false);
        assertThat(all.median()).isCloseTo(score.exposedMedian(w), within(ROUNDING));
        assertThat(all.worstFifth()).isCloseTo(score.exposedWorstFifth(w), within(ROUNDING));
        ExposureBounds.Exposed least = bounds.least(passes.subList(0, first), w, true);
        assertThat(least.median()).isLessThanOrEqualTo(score.exposedMedian(w));
        assertThat(least.worstFifth()).isLessThanOrEqualTo(score.exposedWorstFifth(w));
        if (first < passes.size()) {
          Statistics.label("exposed whatever follows, tenths of what is in the end")
              .collect(tenths(least.median(), score.exposedMedian(w)));
        }
      }
    }
  }

  private static String tenths(double part, double whole) {
    return whole > 0 ? Long.toString(Math.round(10 * part / whole)) : "nothing is exposed";
  }
}
