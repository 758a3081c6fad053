package org.swathbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.Site;
import org.swathbook.season.ControlBounds;

/**
 * How well programs that begin with some passes and go on with one candidate can control the driver
 * weeds at most, with all sites and with each site of the first passes gone. Each bound is made when
 * it is first asked for.
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
  private final @Nullable double[][] most;

  /**
   * @param next candidates that may come next, by date
   * @param passes how many may come, that one with them
   */
  ControlAhead(
      ControlBounds bounds, Candidates candidates, Prefix prefix, int[] next, int passes) {
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
    this.most = new double[gone.size()][];
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
    double[] known = most[view];
    if (known == null) {
      known = look(gone.get(view));
      most[view] = known;
    }
    return known[place];
  }

  private double[] look(Optional<Site> without) {
    double[] out = new double[next.length];
    java.util.Arrays.fill(out, 100);
    ControlBounds.Left[] left = bounds.left(prefix.prepared(), without);
    for (int w : candidates.drivers()) {
      double[] taken = new double[next.length];
      double[] log = new double[next.length];
      for (int i = 0; i < next.length; i++) {
        taken[i] = bounds.mostTaken(next[i], w, without, left[w]);
        log[i] = bounds.mostLogTaken(next[i], w, without, left[w]);
      }
      double[] takenAfter = LaterDates.after(candidates, next, taken, further);
      double[] logAfter = LaterDates.after(candidates, next, log, further);
      for (int i = 0; i < next.length; i++) {
        int date = candidates.placeOfDate(next[i]);
        double pct =
            ControlBounds.mostPct(
                left[w], taken[i] + takenAfter[date], log[i] + logAfter[date]);
        out[i] = Math.min(out[i], pct + ROUNDING);
      }
    }
    return out;
  }
}
