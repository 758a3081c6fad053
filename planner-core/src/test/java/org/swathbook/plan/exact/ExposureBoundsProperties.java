package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.plan.draft.Draft;
import org.swathbook.season.ExposureBounds;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;

/** What first passes leave exposed whatever follows: never more than programs of theirs do. */
class ExposureBoundsProperties {
  private static final double ROUNDING = 1e-8;

  @Property(tries = 20)
  void noFurtherPassesLeaveLessExposed(@ForAll long seed) {
    DrawnCandidates.of(seed).ifPresent(ExposureBoundsProperties::compare);
  }

  /** Counted cohorts stand for others; what holds of the rest may not be said of them. */
  @Property(tries = 15)
  void whereWeedsWereCountedNoneLeavesLessEither(@ForAll long seed) {
    DrawnCandidates.counted(seed).ifPresent(ExposureBoundsProperties::compare);
  }

  @Property(tries = 1000)
  @Tag("slow")
  void noneOfThousandsLeavesLessExposed(@ForAll long seed) {
    DrawnCandidates.of(seed).ifPresent(ExposureBoundsProperties::compare);
  }

  private static void compare(DrawnCandidates drawn) {
    Candidates candidates = drawn.candidates();
    Kernel kernel = candidates.kernel();
    List<Integer> weeds = IntStream.range(0, kernel.traces().weeds().size()).boxed().toList();
    ExposureBounds bounds = ExposureBounds.of(kernel, candidates.withMade(), weeds);
    for (Draft draft : drawn.some().toList()) {
      List<PreparedPass> passes = new ArrayList<>(candidates.start().prepared());
      draft.stops().forEach(s -> passes.add(drawn.programs().evaluator.prepare(s)));
      Score score = kernel.score(passes);
      int first = drawn.random().nextInt(passes.size() + 1);
      for (int w : weeds) {
        ExposureBounds.Exposed all = bounds.least(passes, w, false);
        if (!drawn.isCounted(w)) {
          assertThat(all.median()).isCloseTo(score.exposedMedian(w), within(ROUNDING));
          assertThat(all.worstFifth()).isCloseTo(score.exposedWorstFifth(w), within(ROUNDING));
        }
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
