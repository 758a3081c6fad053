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

/**
 * Walks the cells of one weed in one year through all passes. What the kernel keeps of the same
 * beginning is taken from there. Holds its scratch arrays, so one walk belongs to one thread.
 */
final class CellWalk {
  private static final double[] PAUSE =
      Arrays.stream(Setback.values()).mapToDouble(Setback::pauseDegreeDays).toArray();

  private final Kernel kernel;
  private final PreparedPass[] passes;
  private final SoilJoint soil;
  private final Optional<Site> without;
  private final HouseRules house;

  /** By weed: after no pass, then after each more; null until the weed is first walked. */
  private final KeptCells.@Nullable Leaves[][] afterLeaves;

  private final KeptCells.@Nullable InSoil[][] afterSoil;

  private final @Nullable Census census;
  private final double @Nullable [] loads;
  private final double @Nullable [] rated;

  /** Place of the first cohort of the next biotype among all loads. */
  private int loadsFrom;

  private double[] escapesAll = new double[0];
  private double[] escapesAllUnmet = new double[0];
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
      Kernel kernel,
      List<PreparedPass> passes,
      Optional<Site> without,
      @Nullable Census census,
      double @Nullable [] loads,
      double @Nullable [] rated) {
    this.kernel = kernel;
    this.passes = passes.toArray(PreparedPass[]::new);
    this.without = without;
    this.house = kernel.house();
    this.soil = new SoilJoint(this.passes, without.map(Site::number).orElse(-1), house.missSoil());
    int weeds = kernel.traces().weeds().size();
    this.afterLeaves = new KeptCells.Leaves[weeds][];
    this.afterSoil = new KeptCells.InSoil[weeds][];
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
    begin(weed);
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

  private void begin(int weed) {
    if (afterLeaves[weed] == null) {
      afterLeaves[weed] = kernel.kept().leaves(kernel, passes, weed, without);
      afterSoil[weed] = kernel.kept().soil(kernel, passes, weed, without);
    }
  }

  private void ensure(int cohorts) {
    if (escapesAll.length < cohorts) {
      int n = Math.max(cohorts, kernel.cohorts().most());
      escapesAll = new double[n];
      escapesAllUnmet = new double[n];
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
    KeptCells.InSoil kept = afterSoil[weed][passes.length];
    if (kept.layer[year] == 0) {
      double escapes = 0;
      for (int b = 0; b < pressure.biotypes().size(); b++) {
        escapes += pressure.biotypes().get(b).share() * soil.atCropEmergence(year, weed, b);
      }
      kept.layer[year] = (byte) (1 - escapes >= house.layerThreshold() ? 1 : -1);
    }
    return kept.layer[year] > 0;
  }

  /** What lives of each cohort of all that so many first passes lay; not to be written to. */
  private double[] inSoil(int many, int year, int weed, int b, YearWeed cell, int harvest) {
    KeptCells.InSoil[] after = afterSoil[weed];
    int same = many;
    while (same > 0 && after[same - 1] == after[same]) {
      same--;
    }
    KeptCells.InSoil kept = after[same];
    int at = year * kernel.traces().weeds().get(weed).biotypes().size() + b;
    KeptCells.Lives known = kept.lives[at];
    if (known == null) {
      if (b > 0 && soil.feelsAlike(weed, b - 1, b)) {
        known = new KeptCells.Lives(inSoil(same, year, weed, b - 1, cell, harvest));
      } else {
        double[] lives = new double[cell.cohorts];
        soil.compute(year, weed, b, cell.cohorts, same, harvest, lives);
        known = new KeptCells.Lives(lives);
      }
      kept.lives[at] = known;
    }
    return known.share;
  }

  /** What so many first passes leave through leaves. */
  private LeafState state(
      int many, int year, int weed, int b, YearWeed cell, int harvest, boolean layer) {
    KeptCells.Leaves[] after = afterLeaves[weed];
    int same = many;
    while (same > 0 && after[same - 1] == after[same]) {
      same--;
    }
    int at = 2 * (year * kernel.traces().weeds().get(weed).biotypes().size() + b) + (layer ? 1 : 0);
    LeafState known = after[same].states[at];
    if (known == null) {
      known =
          same == 0
              ? LeafState.start(cell.cohorts)
              : then(
                  state(same - 1, year, weed, b, cell, harvest, layer),
                  passes[same - 1],
                  year,
                  weed,
                  b,
                  cell,
                  harvest,
                  layer);
      after[same].states[at] = known;
    }
    return known;
  }

  /** What one more pass leaves. */
  private LeafState then(
      LeafState before,
      PreparedPass pass,
      int year,
      int weed,
      int b,
      YearWeed cell,
      int harvest,
      boolean layer) {
    DayView view = pass.view(year);
    if (view == null) {
      return before;
    }
    LeafState now = before;
    if (view.scoutings[weed] != now.scoutings) {
      now = now.scouted(view.scoutings[weed]);
    }
    int day = pass.day(year);
    if (day < 0 || day > harvest) {
      return now;
    }
    if (now.whenRated == null && day > cell.ratedOn) {
      now = now.rated();
    }
    FoliarTable table = pass.foliar(year, weed, without);
    if (table.isIdle() || view.from[weed] >= view.up[weed]) {
      return now;
    }
    LeafState out = now.copy();
    foliar(out, table, b, view, weed, cell.costs, layer);
    return out;
  }

  private void biotype(
      int year, int weed, int b, YearWeed cell, double share, int harvest, boolean layer) {
    if (census != null) {
      tellFrom(0, census, year, weed, b, cell, harvest, layer);
    }
    LeafState leaves = state(passes.length, year, weed, b, cell, harvest, layer);
    double[] inSoil = inSoil(passes.length, year, weed, b, cell, harvest);
    double[] whenRated = leaves.aliveWhenRated();
    ratedAlive += share * weighted(cell, whenRated, inSoil);
    killedBeforeCounts += share * killed(cell, leaves.alive, inSoil);
    tellRated(cell, share, whenRated, inSoil);
    close(cell, share, leaves, inSoil);
    loadsFrom += cell.cohorts;
    boolean[] met = leaves.met;
    if (cell.costs != null) {
      met = met.clone();
      inSoil = inSoil.clone();
      inherit(cell, met, inSoil);
    }
    escape(cell, share, met, inSoil);
  }

  /**
   * Tells the census what stands at the last of the passes, and nothing of those before it.
   *
   * @param pressure of the weed
   */
  void standingAtLast(int year, int weed, YearWeed cell, WeedPressure pressure, int harvest) {
    if (census == null) {
      return;
    }
    ensure(cell.cohorts);
    begin(weed);
    for (int b = 0; b < pressure.biotypes().size(); b++) {
      tellFrom(passes.length - 1, census, year, weed, b, cell, harvest, false);
    }
  }

  private void tellFrom(
      int first,
      Census to,
      int year,
      int weed,
      int b,
      YearWeed cell,
      int harvest,
      boolean layer) {
    for (int p = first; p < passes.length; p++) {
      DayView view = passes[p].view(year);
      if (view != null) {
        LeafState before = state(p, year, weed, b, cell, harvest, layer);
        if (view.scoutings[weed] != before.scoutings) {
          before = before.scouted(view.scoutings[weed]);
        }
        tell(to, p, year, weed, b, before, inSoil(p, year, weed, b, cell, harvest), view);
      }
    }
  }

  /**
   * Plants that a count replaced have met in size what all that stand in their place have met, and
   * escape the soil as these do after them.
   */
  private static void inherit(YearWeed cell, boolean[] met, double[] inSoil) {
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

  /**
   * @param to with arrays of its own, which are written to
   */
  private void foliar(
      LeafState to,
      FoliarTable table,
      int b,
      DayView view,
      int weed,
      @Nullable CountCosts costs,
      boolean layer) {
    double[] alive = to.alive;
    double[] cost = to.cost;
    double[] delay = to.delay;
    double[] floor = to.floor;
    boolean[] met = to.met;
    double miss = view.canopy ? house.missUnderCanopy() : house.missFoliar();
    double already = layer ? view.costAfterResidual : view.costBare;
    HeightClock clock = kernel.clock(weed);
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

  private static double killed(YearWeed cell, double[] alive, double[] inSoil) {
    double sum = 0;
    for (int c = 0; c < cell.endedWhenRated; c++) {
      sum += cell.start[c] * cell.weight[c] * (1 - alive[c] * inSoil[c]);
    }
    return sum;
  }

  /** Plants/m² alive on the day of rating, as an eye weighs them. */
  private static double weighted(YearWeed cell, double[] alive, double[] inSoil) {
    double sum = 0;
    for (int c = cell.endedWhenRated; c < cell.upWhenRated; c++) {
      sum += cell.start[c] * cell.weight[c] * (alive[c] * inSoil[c]);
    }
    return sum;
  }

  private void close(YearWeed cell, double share, LeafState leaves, double[] inSoil) {
    double[] alive = leaves.alive;
    double[] cost = leaves.cost;
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

  private void tellRated(YearWeed cell, double share, double[] alive, double[] inSoil) {
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

  private void escape(YearWeed cell, double share, boolean[] met, double[] inSoil) {
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

  private void tell(
      Census to,
      int p,
      int year,
      int weed,
      int b,
      LeafState before,
      double[] inSoil,
      DayView view) {
    HeightClock clock = kernel.clock(weed);
    for (int c = 0; c < inSoil.length; c++) {
      aliveNow[c] = inSoil[c] * before.alive[c];
    }
    int up = view.up[weed];
    int from = view.from[weed];
    double[] heights = view.heightCm(weed);
    for (int c = from; c < up; c++) {
      byte k = view.heightClass[weed][c];
      if (before.delay[c] > 0) {
        double age = Math.max(before.floor[c], view.age[weed][c] - before.delay[c]);
        k = (byte) clock.classAt(age);
        heightNow[c] = aliveNow[c] > 0 ? clock.heightCm(age) : Double.NaN;
      } else {
        heightNow[c] = heights[c];
      }
      classNow[c] = k;
    }
    to.standing(new StandingCohorts(p, year, weed, b, from, up, aliveNow, heightNow, classNow));
  }
}
