package org.swathbook.season;

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

  /** Null where nobody asks what stands at the passes. */
  private final @Nullable StandAtPass stand;

  private final double @Nullable [] loads;
  private final double @Nullable [] rated;

  /** Place of the first cohort of the next biotype among all loads. */
  private int loadsFrom;

  private final StruckCohorts struck;
  private final double[] inSoil;

  /** Of the biotype walked last. */
  private final BiotypeSums sums;

  private final ExposedEmergence exposed;

  private double load;
  private double ratedAlive;
  private double killedBeforeCounts;
  private double survivors;
  private double allSurvivors;
  private double seeding;

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
    this.inSoil = new double[mostCohorts];
    this.sums = new BiotypeSums(struck, inSoil);
    this.exposed = new ExposedEmergence(house, mostCohorts);
    this.passes = passes.toArray(PreparedPass[]::new);
    this.without = without;
    this.soil = new SoilJoint(this.passes, without.map(Site::number).orElse(-1), house.missSoil());
    this.house = house;
    this.clocks = clocks;
    this.stand = census == null ? null : new StandAtPass(census, soil, struck, clocks, mostCohorts);
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
    return exposed.share();
  }

  double exposedToNothing() {
    return exposed.shareUnmet();
  }

  void weed(int year, int weed, YearWeed cell, int harvest) {
    exposed.begin(cell);
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
    exposed.close(cell);
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
    if (!asBefore || stand != null || !leavesFeelAsBefore(year, weed, b, harvest)) {
      leaves(year, weed, b, cell, harvest, layer, 0);
      sums.sum(cell);
    }
    if (rated != null) {
      sums.tellRated(cell, share, rated, loadsFrom);
    }
    if (loads != null) {
      sums.tellLoads(cell, share, loads, loadsFrom);
    }
    ratedAlive += share * sums.ratedAlive();
    killedBeforeCounts += share * sums.killedBeforeCounts();
    load += share * sums.load();
    survivors += share * sums.survivors();
    allSurvivors += share * (sums.survivors() + sums.laterSurvivors());
    seeding += share * sums.seeding();
    loadsFrom += cell.cohorts;
    if (cell.costs != null) {
      inherit(cell);
    }
    exposed.add(cell, share, inSoil, struck.met);
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
    sums.begin();
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
      if (stand != null && p >= toldFrom) {
        stand.tell(p, year, weed, b, n, harvest, view);
      }
      if (!acts(pass, year, harvest)) {
        continue;
      }
      sums.passComes(pass.day(year), cell);
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
}
