package org.swathbook.season;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.Site;
import org.swathbook.control.FoliarTable;

/**
 * Walks the cells of one weed in one year through all passes. Holds its scratch arrays, so one walk
 * belongs to one thread.
 */
final class CellWalk {
  private final PreparedPass[] passes;
  private final SoilJoint soil;
  private final Optional<Site> without;
  private final HouseRules house;
  private final HeightClock[] clocks;

  private final @Nullable Census census;
  private final double @Nullable [] loads;
  private final double @Nullable [] rated;

  /** Place of the first cohort of the next biotype among all loads. */
  private int loadsFrom;

  private final StruckCohorts struck;
  private final double[] aliveWhenRated;
  private final double[] inSoil;
  private final double[] escapesAll;
  private final double[] escapesAllUnmet;
  private final double[] aliveNow;
  private final double[] heightNow;
  private final byte[] classNow;

  /** Whether a pass came after the day of rating, so that what lived then is kept apart. */
  private boolean late;

  // Sums over the biotype walked last, as if all plants were of it.
  private double weightedAlive;
  private double weightedKilled;
  private double bears;
  private double aliveUpByNeeded;
  private double aliveUpLater;
  private double seeds;

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
    this.struck = new StruckCohorts(house, mostCohorts);
    this.aliveWhenRated = new double[mostCohorts];
    this.inSoil = new double[mostCohorts];
    this.escapesAll = new double[mostCohorts];
    this.escapesAllUnmet = new double[mostCohorts];
    int told = census == null ? 0 : mostCohorts;
    this.aliveNow = new double[told];
    this.heightNow = new double[census != null && census.asksHeights() ? told : 0];
    this.classNow = new byte[told];
    this.passes = passes.toArray(PreparedPass[]::new);
    this.without = without;
    this.soil = new SoilJoint(this.passes, without.map(Site::number).orElse(-1), house.missSoil());
    this.house = house;
    this.clocks = clocks;
    this.census = census;
    this.loads = loads;
    this.rated = rated;
  }

  /**
   * Where the next weed's first cohort stands among all of which loads or plants rated are told.
   */
  void tellFrom(int place) {
    loadsFrom = place;
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

  void weed(int year, int weed, YearWeed cell, int harvest) {
    int n = cell.cohorts;
    Arrays.fill(escapesAll, 0, n, 0);
    Arrays.fill(escapesAllUnmet, 0, n, 0);
    load = 0;
    ratedAlive = 0;
    killedBeforeCounts = 0;
    survivors = 0;
    allSurvivors = 0;
    seeding = 0;
    boolean layer = layerMatters(year) && layerAtCropEmergence(year, weed, cell.shares);
    for (int b = 0; b < cell.shares.length; b++) {
      biotype(year, weed, b, cell, cell.shares[b], harvest, layer);
    }
    // More plants than the model had, killed at once, give back more than the model's had cost.
    load = Math.max(0, load);
    expose(cell);
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
  private boolean layerAtCropEmergence(int year, int weed, double[] shares) {
    double escapes = 0;
    for (int b = 0; b < shares.length; b++) {
      escapes += shares[b] * soil.atCropEmergence(year, weed, b);
    }
    return 1 - escapes >= house.layerThreshold();
  }

  private void biotype(
      int year, int weed, int b, YearWeed cell, double share, int harvest, boolean layer) {
    boolean asBefore = b > 0 && cell.costs == null && soil.isFeltAsBefore(weed, b);
    // What a biotype felt as the one before it stands there still, unless a count has changed it.
    if (!asBefore) {
      soil.compute(year, weed, b, cell.cohorts, passes.length, harvest, inSoil);
    }
    if (!asBefore || census != null || !leavesFeelAsBefore(year, weed, b, harvest)) {
      leaves(year, weed, b, cell, harvest, layer, 0);
      sum(cell);
    }
    tell(cell, share);
    ratedAlive += share * weightedAlive;
    killedBeforeCounts += share * weightedKilled;
    load += share * bears;
    survivors += share * aliveUpByNeeded;
    allSurvivors += share * (aliveUpByNeeded + aliveUpLater);
    seeding += share * seeds;
    loadsFrom += cell.cohorts;
    if (cell.costs != null) {
      inherit(cell);
    }
    escape(cell, share);
  }

  /** Whether a biotype feels all that the passes do through leaves as the one before it does. */
  private boolean leavesFeelAsBefore(int year, int weed, int biotype, int harvest) {
    for (PreparedPass pass : passes) {
      if (acts(pass, year, harvest)
          && pass.view(year).from[weed] < pass.view(year).up[weed]
          && !leavesFeelAsBefore(pass, year, weed, biotype)) {
        return false;
      }
    }
    return true;
  }

  private boolean leavesFeelAsBefore(PreparedPass pass, int year, int weed, int biotype) {
    return without.isPresent()
        ? pass.foliar(year, weed, without).isFeltAsBefore(biotype)
        : pass.leavesFeelAsBefore(weed, biotype);
  }

  private static boolean acts(PreparedPass pass, int year, int harvest) {
    int day = pass.day(year);
    return pass.view(year) != null && day >= 0 && day <= harvest;
  }

  /**
   * Tells the census what stands at the passes, and sums nothing up.
   *
   * @param toldFrom first pass of which it is told
   */
  void standing(int year, int weed, YearWeed cell, int harvest, int toldFrom) {
    for (int b = 0; b < cell.shares.length; b++) {
      leaves(year, weed, b, cell, harvest, false, toldFrom);
    }
  }

  /**
   * What the passes do through leaves.
   *
   * @param toldFrom first pass that the census sees
   */
  private void leaves(
      int year, int weed, int b, YearWeed cell, int harvest, boolean layer, int toldFrom) {
    int n = cell.cohorts;
    struck.begin(n);
    late = false;
    int scoutings = 0;
    for (int p = 0; p < passes.length; p++) {
      PreparedPass pass = passes[p];
      DayView view = pass.view(year);
      if (view == null) {
        continue;
      }
      if (view.scoutings[weed] != scoutings) {
        struck.forgetSetbacks();
        scoutings = view.scoutings[weed];
      }
      if (census != null && p >= toldFrom) {
        tell(census, p, year, weed, b, n, harvest, view);
      }
      if (!acts(pass, year, harvest)) {
        continue;
      }
      if (!late && pass.day(year) > cell.ratedOn) {
        System.arraycopy(struck.alive, 0, aliveWhenRated, 0, n);
        late = true;
      }
      if (view.from[weed] < view.up[weed]) {
        FoliarTable table = pass.foliar(year, weed, without);
        if (!table.isIdle()) {
          double already = layer ? view.costAfterResidual : view.costBare;
          struck.strike(table, b, view, weed, clocks[weed], already, cell.costs);
        }
      }
    }
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
        all &= struck.met[heir];
        plants += cell.start[heir];
        escapes += cell.start[heir] * inSoil[heir];
      }
      if (plants > 0) {
        struck.met[c] |= all;
        inSoil[c] *= escapes / plants;
      }
    }
  }

  private void sum(YearWeed cell) {
    weightedKilled = killed(cell);
    weightedAlive = weighted(cell, late ? aliveWhenRated : struck.alive);
    close(cell);
  }

  private double killed(YearWeed cell) {
    double sum = 0;
    for (int c = 0; c < cell.endedWhenRated; c++) {
      sum += cell.start[c] * cell.weight[c] * (1 - struck.alive[c] * inSoil[c]);
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

  private void close(YearWeed cell) {
    double sum = 0;
    double before = 0;
    double after = 0;
    double setSeed = 0;
    for (int c = 0; cell.costs != null && c < cell.endedByHarvest; c++) {
      sum += bears(cell, c);
    }
    double[] alive = struck.alive;
    for (int c = cell.endedByHarvest; c < cell.upByHarvest; c++) {
      double start = cell.start[c] * inSoil[c];
      sum += bears(cell, c);
      setSeed += start * cell.weight[c] * alive[c];
      if (cell.upByNeeded[c]) {
        before += start * alive[c];
      } else {
        after += start * alive[c];
      }
    }
    bears = sum;
    seeds = setSeed;
    aliveUpByNeeded = before;
    aliveUpLater = after;
  }

  /**
   * Plants/m² of a cohort that count in the yield loss. What the soil kills costs nothing whenever
   * it does: plants are an inch tall at most.
   */
  private double bears(YearWeed cell, int c) {
    double start = cell.start[c] * inSoil[c];
    double alive = struck.alive[c];
    double lives = cell.costs == null ? alive : alive * cell.costs.left(c);
    return start * cell.weight[c] * (lives + struck.cost[c]);
  }

  private void tell(YearWeed cell, double share) {
    if (rated != null) {
      tellRated(cell, rated, share);
    }
    if (loads != null) {
      for (int c = cell.costs == null ? cell.endedByHarvest : 0; c < cell.upByHarvest; c++) {
        loads[loadsFrom + c] = share * bears(cell, c);
      }
    }
  }

  private void tellRated(YearWeed cell, double[] to, double share) {
    double[] alive = late ? aliveWhenRated : struck.alive;
    for (int c = cell.endedWhenRated; c < cell.upWhenRated; c++) {
      to[loadsFrom + c] = share * cell.start[c] * cell.weight[c] * (alive[c] * inSoil[c]);
    }
  }

  private void escape(YearWeed cell, double share) {
    for (int c = cell.exposedFrom; c < cell.exposedTo; c++) {
      double escapes = share * inSoil[c];
      escapesAll[c] += escapes;
      if (!struck.met[c]) {
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
      aliveNow[c] *= struck.alive[c];
    }
    int up = view.up[weed];
    int from = view.from[weed];
    for (int c = from; c < up; c++) {
      classNow[c] =
          struck.isSetBack(c)
              ? (byte) clocks[weed].classAt(struck.age(c, view.age[weed]))
              : view.heightClass[weed][c];
    }
    if (to.asksHeights()) {
      tellHeights(weed, view);
    }
    to.standing(new StandingCohorts(p, year, weed, b, from, up, aliveNow, heightNow, classNow));
  }

  private void tellHeights(int weed, DayView view) {
    double[] heights = view.heightCm(weed);
    for (int c = view.from[weed]; c < view.up[weed]; c++) {
      if (!struck.isSetBack(c)) {
        heightNow[c] = heights[c];
      } else {
        double age = struck.age(c, view.age[weed]);
        heightNow[c] = aliveNow[c] > 0 ? clocks[weed].heightCm(age) : Double.NaN;
      }
    }
  }
}
