package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.catalog.Site;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Stop;
import org.swathbook.season.ControlBounds;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;

/**
 * What first passes say of the control that any further ones can reach: never less than they do.
 */
class ControlBoundsProperties {
  private static final double ROUNDING = 1e-6;

  @Property(tries = 20)
  void noFurtherPassesControlMore(@ForAll long seed) {
    DrawnCandidates.of(seed).ifPresent(ControlBoundsProperties::compare);
  }

  /** Counted cohorts stand for others; what holds of the rest may not be said of them. */
  @Property(tries = 15)
  void whereWeedsWereCountedNoneControlsMoreEither(@ForAll long seed) {
    DrawnCandidates.counted(seed).ifPresent(ControlBoundsProperties::compare);
  }

  @Property(tries = 1000)
  @Tag("slow")
  void noneOfThousandsControlsMore(@ForAll long seed) {
    DrawnCandidates.of(seed).ifPresent(ControlBoundsProperties::compare);
  }

  private static void compare(DrawnCandidates drawn) {
    Candidates candidates = drawn.candidates();
    ControlBounds bounds = ControlBounds.of(candidates.kernel(), candidates.withMade());
    drawn
        .some()
        .map(Draft::stops)
        .forEach(s -> compare(drawn, bounds, s, drawn.random().nextInt(s.size() + 1)));
  }

  /**
   * @param first how many of the passes come first
   */
  private static void compare(
      DrawnCandidates drawn, ControlBounds bounds, List<Stop> stops, int first) {
    Candidates candidates = drawn.candidates();
    Kernel kernel = candidates.kernel();
    List<PreparedPass> passes = new ArrayList<>(candidates.start().prepared());
    List<Integer> further = new ArrayList<>();
    int made = passes.size();
    for (int s = 0; s < stops.size(); s++) {
      int c = drawn.place(stops.get(s));
      passes.add(candidates.get(c).pass());
      if (s >= first) {
        further.add(c);
      }
    }
    List<PreparedPass> before = passes.subList(0, made + first);
    List<Optional<Site>> gone = new ArrayList<>();
    gone.add(Optional.empty());
    TreeSet<Site> sites = new TreeSet<>();
    passes.forEach(p -> p.effect().actives().forEach(a -> sites.add(a.ingredient().site())));
    sites.forEach(s -> gone.add(Optional.of(s)));
    for (Optional<Site> site : gone) {
      Score score = site.map(s -> kernel.score(passes, s)).orElseGet(() -> kernel.score(passes));
      List<Integer> weeds = IntStream.range(0, kernel.traces().weeds().size()).boxed().toList();
      List<ControlBounds.Left> lefts = bounds.left(before, site, weeds);
      for (int w : weeds) {
        ControlBounds.Left left = lefts.get(w);
        double taken = 0;
        double log = 0;
        for (int c : further) {
          taken += bounds.mostTaken(c, w, site, left);
          log += bounds.mostLogTaken(c, w, site, left);
        }
        double most = ControlBounds.mostPct(left, taken, log);
        assertThat(score.controlPct(w)).isLessThanOrEqualTo(most + ROUNDING);
        if (further.size() > 1) {
          Statistics.label("several further passes: bound less control, points")
              .collect(Math.min(50, 10 * (int) ((most - score.controlPct(w)) / 10)));
        } else if (further.size() == 1) {
          Statistics.label("one further pass: bound less control, points")
              .collect(Math.min(50, 10 * (int) ((most - score.controlPct(w)) / 10)));
        } else if (!drawn.isCounted(w)) {
          assertThat(score.controlPct(w)).isCloseTo(most, within(ROUNDING));
        }
      }
    }
  }
}
