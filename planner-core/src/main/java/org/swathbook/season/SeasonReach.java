package org.swathbook.season;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.swathbook.catalog.Site;
import org.swathbook.control.FoliarTable;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;

/**
 * What single doses on the dates of a season do at most, whatever program they stand in, cohort by
 * cohort; what the bound on all programs is made of. A cohort here is one of one biotype of one
 * weed in one year.
 *
 * <p>Plants are as small as any passes on the dates can make them ({@link LowestAges}). In one tank
 * kills multiply; that partners of one site count once is told by {@link #strongest}, an antagonism
 * is passed over, and a synergy is credited in full to each active that may have a part in it. Of
 * what several tanks leave of a cohort, each leaves at least {@code 1 - r (1 - p)} through leaves –
 * r the share that a pass on the date can reach ({@link #lossReach}, {@link #ratedReach}), p what
 * the tank's doses leave of the plants that are reached – and all together at least {@code m + (1 -
 * m) s} through the soil, m what every season misses and s the product over all doses.
 */
public final class SeasonReach {
  /** Stands for an infinite logarithm: what is left is no more than a rounding. */
  private static final double ALL = 690;

  private final Kernel kernel;
  private final List<PreparedPass> made;
  private final List<PreparedPass> doses;
  private final LowestAges ages;

  private SeasonReach(
      Kernel kernel, List<PreparedPass> made, List<PreparedPass> doses, int mostPasses) {
    this.kernel = kernel;
    this.made = List.copyOf(made);
    this.doses = List.copyOf(doses);
    this.ages =
        LowestAges.of(
            kernel,
            Stream.concat(made.stream(), doses.stream()).toList(),
            made.size() + Math.max(0, mostPasses - 1),
            kernel.house().minDaysBetweenPasses());
  }

  /**
   * @param made passes that stand before every program
   * @param doses passes of one dose each that a program may hold
   * @param mostPasses that a program may add to those made
   */
  public static SeasonReach of(
      Kernel kernel, List<PreparedPass> made, List<PreparedPass> doses, int mostPasses) {
    return new SeasonReach(kernel, made, doses, mostPasses);
  }

  /** How many cohorts there are in all years. */
  public int cohorts() {
    return kernel.cohorts().size();
  }

  /** Of each cohort the place of its year. */
  public int[] years() {
    int[] out = new int[cohorts()];
    TraceSet traces = kernel.traces();
    for (int y = 0; y < traces.years().size(); y++) {
      Arrays.fill(out, from(y), to(y), y);
    }
    return out;
  }

  private int from(int year) {
    return kernel.cohorts().from(year, 0);
  }

  private int to(int year) {
    return kernel.cohorts().to(year, kernel.traces().weeds().size() - 1);
  }

  /**
   * What each cohort brings into the yield loss of its year after the passes made: the sum of a
   * year is the x of {@link org.swathbook.season.loss.YieldLoss#share}. Years in which plants were
   * counted bring nothing: there a kill can give back more than the plants' own load.
   */
  public double[] load() {
    double[] out = kernel.competing(made);
    TraceSet traces = kernel.traces();
    for (int y = 0; y < traces.years().size(); y++) {
      for (int w = 0; w < traces.weeds().size(); w++) {
        if (kernel.cell(y, w).costs != null) {
          Arrays.fill(out, from(y), to(y), 0);
        }
      }
    }
    return out;
  }

  /**
   * Points of control that each cohort of a weed withholds after the passes made, mean of the
   * years; nothing of the other weeds.
   *
   * @param without a site that does nothing to plants
   */
  public double[] withheld(int weed, Optional<Site> without) {
    double[] points =
        ControlBounds.of(kernel, made).left(made, without, List.of(weed)).get(0).points();
    double[] out = new double[cohorts()];
    int at = 0;
    for (int y = 0; y < kernel.traces().years().size(); y++) {
      int from = kernel.cohorts().from(y, weed);
      int to = kernel.cohorts().to(y, weed);
      System.arraycopy(points, at, out, from, to - from);
      at += to - from;
    }
    return out;
  }

  /** Share of each cohort's load that passes on the date of a dose can take through leaves. */
  public double[] lossReach(int dose) {
    PreparedPass pass = doses.get(dose);
    return reach(pass, (year, weed, view) -> 1 - Math.min(view.costBare, view.costAfterResidual));
  }

  /** The same of its plants as they stand on the day of rating. */
  public double[] ratedReach(int dose) {
    PreparedPass pass = doses.get(dose);
    return reach(
        pass,
        (year, weed, view) ->
            pass.timing().years().get(year).day() <= kernel.cell(year, weed).ratedOn ? 1 : 0);
  }

  private interface Counting {
    double share(int year, int weed, DayView view);
  }

  private double[] reach(PreparedPass pass, Counting counting) {
    TraceSet traces = kernel.traces();
    double[] out = new double[cohorts()];
    for (int y = 0; y < traces.years().size(); y++) {
      DayView view = pass.view(y);
      if (view == null) {
        continue;
      }
      double miss = view.canopy ? kernel.house().missUnderCanopy() : kernel.house().missFoliar();
      for (int w = 0; w < traces.weeds().size(); w++) {
        double share = (1 - miss) * counting.share(y, w, view);
        int cohorts = kernel.cell(y, w).cohorts;
        for (int b = 0; b < traces.weeds().get(w).biotypes().size(); b++) {
          int at = kernel.cohorts().from(y, w) + b * cohorts;
          Arrays.fill(out, at + view.from[w], at + view.up[w], share);
        }
      }
    }
    return out;
  }

  /**
   * What doses of one site in one tank do at most.
   *
   * @param missed years in which the tank cannot go out
   */
  public Reach strongest(List<Reach> ofOneSite, Set<Integer> missed) {
    boolean[] counts = new boolean[cohorts()];
    for (int y = 0; y < kernel.traces().years().size(); y++) {
      Arrays.fill(counts, from(y), to(y), !missed.contains(kernel.traces().years().get(y).year()));
    }
    return Reach.strongest(ofOneSite, counts);
  }

  /** What a dose does at most. */
  public Reach of(int dose) {
    PreparedPass pass = doses.get(dose);
    TraceSet traces = kernel.traces();
    double[] soil = new double[cohorts()];
    double[] leaves = new double[cohorts()];
    int row = ages.row(pass);
    for (int y = 0; y < traces.years().size(); y++) {
      SeasonTrace trace = traces.years().get(y);
      boolean sprayed = !pass.isMissed(y) && pass.day(y) <= trace.harvestDay();
      for (int w = 0; w < traces.weeds().size() && sprayed; w++) {
        int at = kernel.cohorts().from(y, w);
        int cohorts = kernel.cell(y, w).cohorts;
        for (int b = 0; b < traces.weeds().get(w).biotypes().size(); b++) {
          inSoil(soil, at + b * cohorts, cohorts, pass, y, w, b);
          onLeaves(leaves, at + b * cohorts, pass, row, y, w, b);
        }
      }
    }
    return Reach.of(soil, leaves);
  }

  private void inSoil(
      double[] to, int at, int cohorts, PreparedPass pass, int year, int weed, int biotype) {
    double[] lives = new double[cohorts];
    Arrays.fill(lives, 1);
    for (int dose = 0; dose < pass.soilDoses(); dose++) {
      pass.soil(year, dose, weed).leave(lives, pass.keepsInSoil(dose, weed, biotype));
    }
    for (int c = 0; c < cohorts; c++) {
      to[at + c] = log(lives[c]);
    }
  }

  private void onLeaves(
      double[] to, int at, PreparedPass pass, int row, int year, int weed, int biotype) {
    FoliarTable table = kernel.foliar(pass, year, weed);
    DayView view = pass.view(year);
    if (table.isIdle() || view == null) {
      return;
    }
    double[] survival = table.survival(biotype);
    double together = kernel.effects().mostSynergy(pass.effect().actives(), weed);
    for (int c = view.from[weed]; c < view.up[weed]; c++) {
      double lives = survival[kernel.clock(weed).classAt(ages.age(row, year, weed, c))];
      to[at + c] = lives < 1 ? Math.min(ALL, log(lives) + together) : 0;
    }
  }

  /** Negated. */
  private static double log(double lives) {
    return lives > 0 ? Math.min(ALL, -StrictMath.log(lives)) : ALL;
  }

  /** Share of plants that every season's residuals miss. */
  public double missedInSoil() {
    return kernel.house().missSoil();
  }
}
