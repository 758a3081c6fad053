package org.swathbook.plan.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Site;
import org.swathbook.season.ControlBounds;

/**
 * How well programs that begin with some passes and go on with one candidate can control the driver
 * weeds at most, with all sites and with each site of the first passes gone. Each bound is made
 * when it is first asked for.
 */
final class ControlAhead {
  /** More than all rounding of sums, points. */
  private static final double ROUNDING = 1e-6;

  private final ControlBounds bounds;
  private final Candidates candidates;
  private final Prefix prefix;
  private final int[] next;
  private final int further;
  private final List<Optional<Site>> gone = new ArrayList<>();
  private final @Nullable View[] views;

  /**
   * @param next candidates that may come next, by date
   * @param passes how many may come, that one with them
   */
  ControlAhead(ControlBounds bounds, Candidates candidates, Prefix prefix, int[] next, int passes) {
    this.bounds = bounds;
    this.candidates = candidates;
    this.prefix = prefix;
    this.next = next;
    this.further = passes - 1;
    TreeSet<Site> sites = new TreeSet<>();
    prefix
        .prepared()
        .forEach(p -> p.effect().actives().forEach(a -> sites.add(a.ingredient().site())));
    gone.add(Optional.empty());
    sites.forEach(s -> gone.add(Optional.of(s)));
    this.views = new View[gone.size()];
  }

  /** How many ways there are to look at the weeds: with all sites, then with each one gone. */
  int views() {
    return gone.size();
  }

  /**
   * Control at most of the driver weed that is held least, percent; 100 without one.
   *
   * @param view 0 with all sites, else with one of them gone
   * @param place of the candidate among those that may come next
   */
  double mostPct(int view, int place) {
    double out = 100;
    for (int d = 0; d < candidates.drivers().size(); d++) {
      out = Math.min(out, mostPct(view, d, place));
    }
    return out;
  }

  /**
   * The same of one driver weed.
   *
   * @param driver its place among the driver weeds
   */
  double mostPct(int view, int driver, int place) {
    View known = views[view];
    if (known == null) {
      known = new View(gone.get(view));
      views[view] = known;
    }
    return known.mostPct(driver, place);
  }

  /** With all sites or one gone. */
  private final class View {
    private final Optional<Site> without;
    private final List<ControlBounds.Left> left;
    private final double[][] most;

    View(Optional<Site> without) {
      this.without = without;
      this.left = bounds.left(prefix.prepared(), without, candidates.drivers());
      this.most = new double[left.size()][next.length];
      for (int d = 0; d < most.length; d++) {
        Arrays.fill(most[d], Double.NaN);
        if (further > 0) {
          withFurther(d);
        }
      }
    }

    double mostPct(int driver, int place) {
      double known = most[driver][place];
      if (Double.isNaN(known)) {
        // The last pass of all: what it takes alone says more than its logarithm.
        known =
            ROUNDING
                + ControlBounds.mostPct(left.get(driver), taken(driver, place), Double.MAX_VALUE);
        most[driver][place] = known;
      }
      return known;
    }

    private double taken(int driver, int place) {
      int weed = candidates.drivers().get(driver);
      return bounds.mostTaken(next[place], weed, without, left.get(driver));
    }

    private void withFurther(int driver) {
      int weed = candidates.drivers().get(driver);
      double[] taken = new double[next.length];
      double[] log = new double[next.length];
      for (int i = 0; i < next.length; i++) {
        taken[i] = taken(driver, i);
        log[i] = bounds.mostLogTaken(next[i], weed, without, left.get(driver));
      }
      double[] takenAfter = LaterDates.after(candidates, next, taken, further);
      double[] logAfter = LaterDates.after(candidates, next, log, further);
      for (int i = 0; i < next.length; i++) {
        int date = candidates.placeOfDate(next[i]);
        most[driver][i] =
            ROUNDING
                + ControlBounds.mostPct(
                    left.get(driver), taken[i] + takenAfter[date], log[i] + logAfter[date]);
      }
    }
  }
}
