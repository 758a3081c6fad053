package org.swathbook.season;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.control.FoliarTable;
import org.swathbook.control.Setback;
import org.swathbook.season.loss.CountCosts;

/**
 * Walks the cells of one weed in one year through all passes. Holds its scratch arrays, so one walk
 * belongs to one thread.
 */
final class CellWalk {
  private static final double[] PAUSE =
      Arrays.stream(Setback.values()).mapToDouble(Setback::pauseDegreeDays).toArray();

  private final PreparedPass[] passes;
  private final SoilJoint soil;
  private final Optional<Site> without;
  private final HouseRules house;
  private final HeightClock[] clocks;

  /** Of any weed in any year. */
  private final int mostCohorts;

  private final @Nullable Census census;
  private final double @Nullable [] loads;
  private final double @Nullable [] rated;

  /** Place of the first cohort of the next biotype among all loads. */
  private int loadsFrom;

  /** Of the plants that the soil lets live, the share that the leaves' actives have left. */
  private double[] alive = new double[0];

  private double[] aliveWhenRated = new double[0];
  private double[] cost = new double[0];
  private double[] delay = new double[0];
  private double[] floor = new double[0];
  private double[] inSoil = new double[0];
  private double[] escapesAll = new double[0];
  private double[] escapesAllUnmet = new double[0];
  private boolean[] met = new boolean[0];
  private double[] aliveNow = new double[0];
  private double[] heightNow = new double[0];
  private byte[] classNow = new byte[0];

  private double load;
  private double ratedAlive;
  private double killedBeforeCounts;
  private double survivors;
  private double allSurvivors;
  private double seeding;
  private double exposedShare;
  private double exposedToNothing;

  CellWalk(
      List<PreparedPass> passes,
      Optional<Site> without,
      HouseRules house,
      HeightClock[] clocks,
      int mostCohorts,
      @Nullable Census census,
      double @Nullable [] loads,
      double @Nullable [] rated) {
    this.mostCohorts = mostCohorts;
    this.passes = passes.toArray(PreparedPass[]::new);
    this.without = without;
    this.soil = new SoilJoint(this.passes, without.map(Site::number).orElse(-1), house.missSoil());
    this.house = house;
    this.clocks = clocks;
    this.census = census;
    this.loads = loads;
    this.rated = rated;
  }

  /** Plants/m² that count in the yield loss. */
  double load() {
    return load;
  }

  double ratedAlive() {
    return ratedAlive;
  }

  /**
   * Of the plants that counts have replaced by the day of rating, those that passes had killed
   * before, plants/m² weighted: untreated, they would stand beside the counted ones.
   */
  double killedBeforeCounts() {
    return killedBeforeCounts;
  }

  double survivors() {
    return survivors;
  }

  double allSurvivors() {
    return allSurvivors;
  }

  /** Plants/m² alive at harvest, each by the seed it sets beside one up before the crop. */
  double seeding() {
    return seeding;
  }

  double exposedShare() {
    return exposedShare;
  }

  double exposedToNothing() {
    return exposedToNothing;
  }

  void weed(int year, int weed, YearWeed cell, WeedPressure pressure, int harvest) {
    int n = cell.cohorts;
    ensure(n);
    Arrays.fill(escapesAll, 0, n, 0);
    Arrays.fill(escapesAllUnmet, 0, n, 0);
    load = 0;
    ratedAlive = 0;
    killedBeforeCounts = 0;
    survivors = 0;
    allSurvivors = 0;
    seeding = 0;
    boolean layer = layerMatters(year) && layerAtCropEmergence(year, weed, pressure);
    for (int b = 0; b < pressure.biotypes().size(); b++) {
      biotype(year, weed, b, cell, pressure.biotypes().get(b).share(), harvest, layer);
    }
    // More plants than the model had, killed at once, give back more than the model's had cost.
    load = Math.max(0, load);
    expose(cell);
  }

  private void ensure(int cohorts) {
    if (alive.length < cohorts) {
      int n = Math.max(cohorts, mostCohorts);
      alive = new double[n];
      aliveWhenRated = new double[n];
      cost = new double[n];
      delay = new double[n];
      floor = new double[n];
      inSoil = new double[n];
      escapesAll = new double[n];
      escapesAllUnmet = new double[n];
      met = new boolean[n];
      if (census != null) {
        aliveNow = new double[n];
        heightNow = new double[n];
        classNow = new byte[n];
      }
    }
  }

  /** Whether any pass comes when late removal costs less after a layer than without. */
  private boolean layerMatters(int year) {
    for (PreparedPass pass : passes) {
      DayView view = pass.view(year);
      if (view != null && view.costBare != view.costAfterResidual) {
        return true;
      }
    }
    return false;
  }

  /** Whether a layer holds on the day the crop comes up: then late removal costs less. */
  private boolean layerAtCropEmergence(int year, int weed, WeedPressure pressure) {
    double escapes = 0;
    for (int b = 0; b < pressure.biotypes().size(); b++) {
      escapes += pressure.biotypes().get(b).share() * soil.atCropEmergence(year, weed, b);
    }
    return 1 - escapes >= house.layerThreshold();
  }

  private void biotype(
      int year, int weed, int b, YearWeed cell, double share, int harvest, boolean layer) {
    int n = cell.cohorts;
    // What a biotype felt as the one before it stands there still, unless a count has changed it.
    if (b == 0 || cell.costs != null || !soil.feelsAlike(weed, b - 1, b)) {
      soil.compute(year, weed, b, n, passes.length, harvest, inSoil);
    }
    boolean late = leaves(year, weed, b, cell, harvest, layer, 0);
    ratedAlive += share * weighted(cell, late ? aliveWhenRated : alive);
    killedBeforeCounts += share * killed(cell);
    tellRated(cell, share, late ? aliveWhenRated : alive);
    close(cell, share);
    loadsFrom += n;
    if (cell.costs != null) {
      inherit(cell);
    }
    escape(cell, share);
  }

  /**
   * Tells the census what stands at the last of the passes, and nothing of those before it.
   *
   * @param pressure of the weed
   */
  void standingAtLast(int year, int weed, YearWeed cell, WeedPressure pressure, int harvest) {
    ensure(cell.cohorts);
    for (int b = 0; b < pressure.biotypes().size(); b++) {
      leaves(year, weed, b, cell, harvest, false, passes.length - 1);
    }
  }

  /**
   * What the passes do through leaves.
   *
   * @param toldFrom first pass that the census sees
   * @return whether a pass came after the day of rating, so that what lived then is kept apart
   */
  private boolean leaves(
      int year, int weed, int b, YearWeed cell, int harvest, boolean layer, int toldFrom) {
    int n = cell.cohorts;
    Arrays.fill(alive, 0, n, 1);
    Arrays.fill(cost, 0, n, 0);
    Arrays.fill(delay, 0, n, 0);
    Arrays.fill(met, 0, n, false);
    boolean late = false;
    int scoutings = 0;
    for (int p = 0; p < passes.length; p++) {
      PreparedPass pass = passes[p];
      DayView view = pass.view(year);
      if (view == null) {
        continue;
      }
      if (view.scoutings[weed] != scoutings) {
        // The size that was seen already holds what earlier passes had set back.
        Arrays.fill(delay, 0, n, 0);
        scoutings = view.scoutings[weed];
      }
      if (census != null && p >= toldFrom) {
        tell(census, p, year, weed, b, n, harvest, view);
      }
      int day = pass.day(year);
      if (day < 0 || day > harvest) {
        continue;
      }
      if (!late && day > cell.ratedOn) {
        System.arraycopy(alive, 0, aliveWhenRated, 0, n);
        late = true;
      }
      if (view.from[weed] < view.up[weed]) {
        FoliarTable table = pass.foliar(year, weed, without);
        if (!table.isIdle()) {
          foliar(table, b, view, weed, cell.costs, layer);
        }
      }
    }
    return late;
  }

  /**
   * Plants that a count replaced have met in size what all that stand in their place have met, and
   * escape the soil as these do after them.
   */
  private void inherit(YearWeed cell) {
    for (int c = cell.cohorts - 1; c >= 0; c--) {
      boolean all = true;
      double plants = 0;
      double escapes = 0;
      for (int heir = cell.set.heirsFrom(c); heir < cell.set.heirsTo(c); heir++) {
        all &= met[heir];
        plants += cell.start[heir];
        escapes += cell.start[heir] * inSoil[heir];
      }
      if (plants > 0) {
        met[c] |= all;
        inSoil[c] *= escapes / plants;
      }
    }
  }

  private void foliar(
      FoliarTable table, int b, DayView view, int weed, @Nullable CountCosts costs, boolean layer) {
    double miss = view.canopy ? house.missUnderCanopy() : house.missFoliar();
    double already = layer ? view.costAfterResidual : view.costBare;
    HeightClock clock = clocks[weed];
    double[] ages = view.age[weed];
    byte[] classes = view.heightClass[weed];
    double inSize = 1 - house.effectiveSite();
    double[] survival = table.survival(b);
    for (int c = view.from[weed]; c < view.up[weed]; c++) {
      double age = ages[c];
      int k = classes[c];
      if (delay[c] > 0) {
        age = Math.max(floor[c], age - delay[c]);
        k = clock.classAt(age);
      }
      double lives = survival[k];
      if (lives < 1) {
        double before = alive[c];
        alive[c] = before * (miss + (1 - miss) * lives);
        cost[c] += (before - alive[c]) * (costs == null ? already : costs.since(c, already));
        if (lives <= inSize) {
          met[c] = true;
        }
        int back = table.setbackRank(b, k);
        if (back > 0) {
          floor[c] = Math.min(age, clock.ageAfter(back, k));
          delay[c] = ages[c] - floor[c] + PAUSE[back];
        }
      }
    }
  }

  private double killed(YearWeed cell) {
    double sum = 0;
    for (int c = 0; c < cell.endedWhenRated; c++) {
      sum += cell.start[c] * cell.weight[c] * (1 - alive[c] * inSoil[c]);
    }
    return sum;
  }

  /** Plants/m² alive on the day of rating, as an eye weighs them. */
  private double weighted(YearWeed cell, double[] alive) {
    double sum = 0;
    for (int c = cell.endedWhenRated; c < cell.upWhenRated; c++) {
      sum += cell.start[c] * cell.weight[c] * (alive[c] * inSoil[c]);
    }
    return sum;
  }

  private void close(YearWeed cell, double share) {
    double loadSum = 0;
    double before = 0;
    double after = 0;
    double seeds = 0;
    CountCosts costs = cell.costs;
    for (int c = 0; costs != null && c < cell.endedByHarvest; c++) {
      double start = cell.start[c] * inSoil[c];
      double bears = start * cell.weight[c] * (alive[c] * costs.left(c) + cost[c]);
      loadSum += bears;
      tell(c, share * bears);
    }
    for (int c = cell.endedByHarvest; c < cell.upByHarvest; c++) {
      // What the soil kills costs nothing whenever it does: plants are an inch tall at most.
      double start = cell.start[c] * inSoil[c];
      double lives = costs == null ? alive[c] : alive[c] * costs.left(c);
      double bears = start * cell.weight[c] * (lives + cost[c]);
      loadSum += bears;
      tell(c, share * bears);
      seeds += start * cell.weight[c] * alive[c];
      if (cell.upByNeeded[c]) {
        before += start * alive[c];
      } else {
        after += start * alive[c];
      }
    }
    load += share * loadSum;
    survivors += share * before;
    allSurvivors += share * (before + after);
    seeding += share * seeds;
  }

  private void tellRated(YearWeed cell, double share, double[] alive) {
    if (rated != null) {
      for (int c = cell.endedWhenRated; c < cell.upWhenRated; c++) {
        rated[loadsFrom + c] = share * cell.start[c] * cell.weight[c] * (alive[c] * inSoil[c]);
      }
    }
  }

  private void tell(int cohort, double load) {
    if (loads != null) {
      loads[loadsFrom + cohort] = load;
    }
  }

  private void escape(YearWeed cell, double share) {
    for (int c = cell.exposedFrom; c < cell.exposedTo; c++) {
      double escapes = share * inSoil[c];
      escapesAll[c] += escapes;
      if (!met[c]) {
        escapesAllUnmet[c] += escapes;
      }
    }
  }

  private void expose(YearWeed cell) {
    double exposed = 0;
    double unmet = 0;
    for (int c = cell.exposedFrom; c < cell.exposedTo; c++) {
      if (1 - escapesAll[c] < house.layerThreshold()) {
        exposed += cell.emergence[c] * escapesAll[c];
        unmet += cell.emergence[c] * escapesAllUnmet[c];
      }
    }
    boolean any = cell.totalEmergence > 0;
    exposedShare = any ? exposed / cell.totalEmergence : 0;
    exposedToNothing = any ? unmet / cell.totalEmergence : 0;
  }

  private void tell(Census to, int p, int year, int weed, int b, int n, int harvest, DayView view) {
    soil.compute(year, weed, b, n, p, harvest, aliveNow);
    for (int c = 0; c < n; c++) {
      aliveNow[c] *= alive[c];
    }
    int up = view.up[weed];
    int from = view.from[weed];
    double[] heights = view.heightCm(weed);
    for (int c = from; c < up; c++) {
      byte k = view.heightClass[weed][c];
      if (delay[c] > 0) {
        double age = Math.max(floor[c], view.age[weed][c] - delay[c]);
        k = (byte) clocks[weed].classAt(age);
        heightNow[c] = aliveNow[c] > 0 ? clocks[weed].heightCm(age) : Double.NaN;
      } else {
        heightNow[c] = heights[c];
      }
      classNow[c] = k;
    }
    to.standing(new StandingCohorts(p, year, weed, b, from, up, aliveNow, heightNow, classNow));
  }
}
