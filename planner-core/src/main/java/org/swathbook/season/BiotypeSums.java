package org.swathbook.season;

/**
 * What all passes of a year have left of one biotype of a weed, summed over its cohorts as if all
 * plants were of it, in plants/m². Filled anew for each biotype; one belongs to one walk.
 */
final class BiotypeSums {
  private final StruckCohorts struck;

  /** By cohort the share that the soil lets live; the walk's own. */
  private final double[] inSoil;

  /** By cohort what lived on the day of rating, where a pass came after it. */
  private final double[] aliveWhenRated;

  private boolean passedAfterRating;

  private double ratedAlive;
  private double killedBeforeCounts;
  private double bears;
  private double survivors;
  private double laterSurvivors;
  private double seeding;

  /**
   * @param struck what passes have done through leaves; the walk's own
   * @param inSoil by cohort the share that the soil lets live; the walk's own
   */
  BiotypeSums(StruckCohorts struck, double[] inSoil) {
    this.struck = struck;
    this.inSoil = inSoil;
    this.aliveWhenRated = new double[inSoil.length];
  }

  void begin() {
    passedAfterRating = false;
  }

  /** A pass is about to act; what lives on the day of rating is kept from those after it. */
  void passComes(int day, YearWeed cell) {
    if (!passedAfterRating && day > cell.ratedOn) {
      System.arraycopy(struck.alive, 0, aliveWhenRated, 0, cell.cohorts);
      passedAfterRating = true;
    }
  }

  /** Sums up after the last pass. */
  void sum(YearWeed cell) {
    killedBeforeCounts = killed(cell);
    ratedAlive = rated(cell);
    atHarvest(cell);
  }

  private double killed(YearWeed cell) {
    double sum = 0;
    for (int c = 0; c < cell.endedWhenRated; c++) {
      sum += cell.start[c] * cell.weight[c] * (1 - struck.alive[c] * inSoil[c]);
    }
    return sum;
  }

  private double rated(YearWeed cell) {
    double[] alive = aliveWhenRated();
    double sum = 0;
    for (int c = cell.endedWhenRated; c < cell.upWhenRated; c++) {
      sum += cell.start[c] * cell.weight[c] * (alive[c] * inSoil[c]);
    }
    return sum;
  }

  private double[] aliveWhenRated() {
    return passedAfterRating ? aliveWhenRated : struck.alive;
  }

  private void atHarvest(YearWeed cell) {
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
    seeding = setSeed;
    survivors = before;
    laterSurvivors = after;
  }

  /**
   * Of a cohort what counts in the yield loss. What the soil kills costs nothing whenever it does:
   * plants are an inch tall at most.
   */
  private double bears(YearWeed cell, int c) {
    double start = cell.start[c] * inSoil[c];
    double alive = struck.alive[c];
    double lives = cell.costs == null ? alive : alive * cell.costs.left(c);
    return start * cell.weight[c] * (lives + struck.cost[c]);
  }

  /** Tells by cohort what counts in the yield loss, times a share, from a place on. */
  void tellLoads(YearWeed cell, double share, double[] to, int from) {
    for (int c = cell.costs == null ? cell.endedByHarvest : 0; c < cell.upByHarvest; c++) {
      to[from + c] = share * bears(cell, c);
    }
  }

  /** Tells by cohort what is alive on the day of rating, times a share, from a place on. */
  void tellRated(YearWeed cell, double share, double[] to, int from) {
    double[] alive = aliveWhenRated();
    for (int c = cell.endedWhenRated; c < cell.upWhenRated; c++) {
      to[from + c] = share * cell.start[c] * cell.weight[c] * (alive[c] * inSoil[c]);
    }
  }

  /** Alive on the day of rating, as an eye weighs them. */
  double ratedAlive() {
    return ratedAlive;
  }

  /** Of those that counts have replaced by the day of rating what was killed, weighted as these. */
  double killedBeforeCounts() {
    return killedBeforeCounts;
  }

  /** What counts in the yield loss. */
  double load() {
    return bears;
  }

  /** Alive at harvest of what came up while control is needed. */
  double survivors() {
    return survivors;
  }

  /** Alive at harvest of what came up later. */
  double laterSurvivors() {
    return laterSurvivors;
  }

  /** Alive at harvest, each by the seed it sets beside one up before the crop. */
  double seeding() {
    return seeding;
  }
}
