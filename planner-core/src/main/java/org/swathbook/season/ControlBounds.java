package org.swathbook.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Site;
import org.swathbook.control.FoliarTable;
import org.swathbook.control.JointAction;
import org.swathbook.growth.TraceSet;

/**
 * What passes can add at most to the control of a weed, with all sites or with one gone, whatever
 * other passes of the same list stand beside them.
 *
 * <p>Control is 100 less the points that plants still alive withhold, each cohort its own ({@link
 * Left}). Of these a pass takes at most the share that it would kill alone of plants as small as
 * any program can make them ({@link LowestAges}; survival never falls with height), the share that
 * no pass reaches left out. Several passes leave of a cohort at least the product of what each
 * leaves alone: foliar kills multiply; in the soil actives of one site count once, which leaves
 * more; and the one share of misses of a season leaves more than one a pass, since {@code (m + (1 -
 * m) p q) / (m + (1 - m) p)} falls with p and is {@code m + (1 - m) q} at p = 1. So they take at
 * most the sum of what they take alone ({@link #mostTaken}), and the logarithm of what they leave
 * is at least that of what was left less the sum of {@link #mostLogTaken}: by Jensen's inequality a
 * weighted mean of exponentials is no less than the exponential of the weighted mean. A site that
 * does nothing sets no plant back further, so the same holds of what is left of a tank.
 *
 * <p>Where plants were counted, what passes had killed before is added to what would stand
 * untreated; such years bound nothing here.
 */
public final class ControlBounds {
  /** Stands for an infinite logarithm, so that none of it on no plants is still none. */
  private static final double ALL = 1e300;

  /** More than the highest number of a site. */
  private static final int SITES = 64;

  private final Kernel kernel;
  private final List<PreparedPass> passes;
  private final List<List<Site>> sites;

  /** By pass and number of a site: its place among the sites of the pass, from 1; 0 for none. */
  private final int[][] places;

  private final LowestAges ages;
  private final Kills[][][] kills;

  /**
   * By cohort: the share that a pass kills at most, and the logarithm of what it leaves, negated.
   */
  private static final class Kills {
    private final double[] share;
    private final double[] log;

    Kills(double[] share, double[] log) {
      this.share = share;
      this.log = log;
    }
  }

  /**
   * Points of control that each cohort of a weed withholds after some passes, mean of the years.
   */
  public static final class Left {
    private final double[] points;
    private final double sum;

    private Left(double[] points) {
      this.points = points;
      double total = 0;
      for (double p : points) {
        total += p;
      }
      this.sum = total;
    }

    /** By year, biotype and cohort; not to be written to. */
    double[] points() {
      return points;
    }

    /** What they withhold together, points. */
    public double sum() {
      return sum;
    }
  }

  private ControlBounds(Kernel kernel, List<PreparedPass> passes) {
    this.kernel = kernel;
    this.passes = List.copyOf(passes);
    this.sites = passes.stream().map(p -> WeedOutcomes.sitesOf(List.of(p))).toList();
    this.places = new int[passes.size()][SITES];
    for (int p = 0; p < places.length; p++) {
      for (int s = 0; s < sites.get(p).size(); s++) {
        places[p][sites.get(p).get(s).number()] = s + 1;
      }
    }
    this.ages = LowestAges.of(kernel, passes);
    this.kills = new Kills[passes.size()][kernel.traces().weeds().size()][];
  }

  /** For all programs made of these passes. */
  public static ControlBounds of(Kernel kernel, List<PreparedPass> passes) {
    return new ControlBounds(kernel, passes);
  }

  /**
   * What withholds control of weeds after some passes.
   *
   * @param weeds by their places among the field's
   */
  public List<Left> left(List<PreparedPass> after, Optional<Site> without, List<Integer> weeds) {
    double[] alive = kernel.rated(after, without, weeds);
    TraceSet traces = kernel.traces();
    int years = traces.years().size();
    List<Left> out = new ArrayList<>();
    for (int w : weeds) {
      double[] points = new double[size(w)];
      int at = 0;
      for (int y = 0; y < years; y++) {
        YearWeed cell = kernel.cell(y, w);
        int from = kernel.cohorts().from(y, w);
        int to = kernel.cohorts().to(y, w);
        if (cell.costs == null && cell.untreatedWhenRated > 0) {
          double perPlant = 100 / (cell.untreatedWhenRated * years);
          for (int i = from; i < to; i++) {
            points[at + i - from] = alive[i] * perPlant;
          }
        }
        at += to - from;
      }
      out.add(new Left(points));
    }
    return out;
  }

  private int size(int weed) {
    int n = 0;
    for (int y = 0; y < kernel.traces().years().size(); y++) {
      n += kernel.cohorts().to(y, weed) - kernel.cohorts().from(y, weed);
    }
    return n;
  }

  /** Points that a pass of the list takes at most of what is left, in whatever program. */
  public double mostTaken(int pass, int weed, Optional<Site> without, Left left) {
    return dot(kills(pass, weed, without).share, left.points);
  }

  /**
   * By how much a pass lowers the natural logarithm of what is left at most, in whatever program.
   */
  public double mostLogTaken(int pass, int weed, Optional<Site> without, Left left) {
    return left.sum > 0 ? dot(kills(pass, weed, without).log, left.points) / left.sum : 0;
  }

  /**
   * Control at most, percent.
   *
   * @param taken sum of {@link #mostTaken} over further passes
   * @param logTaken sum of {@link #mostLogTaken} over them
   */
  public static double mostPct(Left left, double taken, double logTaken) {
    return 100 - Math.max(left.sum - taken, left.sum * StrictMath.exp(-logTaken));
  }

  private Kills kills(int pass, int weed, Optional<Site> without) {
    Kills[] bySite = kills[pass][weed];
    if (bySite == null) {
      bySite = new Kills[sites.get(pass).size() + 1];
      kills[pass][weed] = bySite;
    }
    int place = without.isEmpty() ? 0 : places[pass][without.get().number()];
    Kills known = bySite[place];
    if (known == null) {
      known = make(passes.get(pass), weed, place == 0 ? Optional.empty() : without);
      bySite[place] = known;
    }
    return known;
  }

  private Kills make(PreparedPass pass, int weed, Optional<Site> without) {
    double[] share = new double[size(weed)];
    int off = without.map(Site::number).orElse(-1);
    int row = ages.row(pass);
    int biotypes = kernel.traces().weeds().get(weed).biotypes().size();
    int at = 0;
    for (int y = 0; y < kernel.traces().years().size(); y++) {
      YearWeed cell = kernel.cell(y, weed);
      boolean made =
          !pass.isMissed(y) && pass.day(y) <= kernel.traces().years().get(y).harvestDay();
      for (int b = 0; b < biotypes; b++) {
        if (made) {
          fill(share, at, pass, y, weed, b, row, off, without);
        }
        at += cell.cohorts;
      }
    }
    double[] log = new double[share.length];
    for (int i = 0; i < log.length; i++) {
      log[i] = share[i] < 1 ? -StrictMath.log1p(-share[i]) : ALL;
    }
    return new Kills(share, log);
  }

  private void fill(
      double[] share,
      int at,
      PreparedPass pass,
      int year,
      int weed,
      int biotype,
      int row,
      int off,
      Optional<Site> without) {
    int cohorts = kernel.cell(year, weed).cohorts;
    double[] lives = new double[cohorts];
    Arrays.fill(lives, 1);
    SoilJoint soil = new SoilJoint(new PreparedPass[] {pass}, off, kernel.house().missSoil());
    soil.compute(year, weed, biotype, cohorts, 1, pass.day(year), lives);
    if (pass.day(year) <= kernel.cell(year, weed).ratedOn) {
      DayView view = pass.view(year);
      double miss = view.canopy ? kernel.house().missUnderCanopy() : kernel.house().missFoliar();
      FoliarTable table = pass.foliar(year, weed, without);
      for (int c = view.from[weed]; c < view.up[weed]; c++) {
        int k = kernel.clock(weed).classAt(ages.age(row, year, weed, c));
        lives[c] *= JointAction.withMisses(miss, table.survival(biotype, k));
      }
    }
    for (int c = 0; c < cohorts; c++) {
      share[at + c] = 1 - lives[c];
    }
  }

  private static double dot(double[] a, double[] b) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int i = 0;
    for (; i + 3 < a.length; i += 4) {
      s0 += a[i] * b[i];
      s1 += a[i + 1] * b[i + 1];
      s2 += a[i + 2] * b[i + 2];
      s3 += a[i + 3] * b[i + 3];
    }
    for (; i < a.length; i++) {
      s0 += a[i] * b[i];
    }
    return s0 + s1 + (s2 + s3);
  }
}
