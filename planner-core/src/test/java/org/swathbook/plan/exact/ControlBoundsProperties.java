package org.swathbook.plan.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.book.Book;
import org.swathbook.catalog.Site;
import org.swathbook.plan.DemoCopy;
import org.swathbook.plan.DrawnPrograms;
import org.swathbook.plan.SmallBook;
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
  private static final int MOST_PASSES = 8;
  private static final int PROGRAMS = 20;
  private static final double ROUNDING = 1e-6;

  private static final Book DEMO = DemoCopy.inMemory();

  @Property(tries = 20)
  void noFurtherPassesControlMore(@ForAll long seed) {
    compare(seed);
  }

  @Property(tries = 1000)
  @Tag("slow")
  void noneOfThousandsControlsMore(@ForAll long seed) {
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
    ControlBounds bounds = ControlBounds.of(candidates.kernel(), candidates.withMade());
    for (int i = 0; i < PROGRAMS && !drawn.drafts.isEmpty(); i++) {
      Draft draft = drawn.drafts.get(random.nextInt(drawn.drafts.size()));
      int first = random.nextInt(draft.stops().size() + 1);
      compare(candidates, bounds, draft.stops(), first);
    }
  }

  /**
   * @param first how many of the passes come first
   */
  private static void compare(
      Candidates candidates, ControlBounds bounds, List<Stop> stops, int first) {
    Kernel kernel = candidates.kernel();
    List<PreparedPass> passes = new ArrayList<>(candidates.start().prepared());
    List<Integer> further = new ArrayList<>();
    int made = passes.size();
    for (int s = 0; s < stops.size(); s++) {
      int c = place(candidates, stops.get(s));
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
        } else {
          assertThat(score.controlPct(w)).isCloseTo(most, within());
        }
      }
    }
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.api.Assertions.within(ROUNDING);
  }

  private static int place(Candidates candidates, Stop stop) {
    for (int c = 0; c < candidates.size(); c++) {
      if (candidates.get(c).stop().equals(stop)) {
        return c;
      }
    }
    throw new IllegalArgumentException("no candidate " + stop);
  }
}
