package org.swathbook.growth;

/**
 * A weed through one weather year on ground that no crop shades: the same for all fields that have
 * these days and were tilled on the same one. Shade keeps seedlings down that would be up and slows
 * plants, but changes nothing of what waits in the soil, so it is laid over this afterwards ({@link
 * OutdoorModel}).
 */
final class WeedCourse {
  private final WeedGrowth growth;
  private final double[] emerging;

  private WeedCourse(WeedGrowth growth, int days) {
    this.growth = growth;
    this.emerging = new double[days];
  }

  /**
   * Every day, all rates are taken from the states of the evening before and what the day brings,
   * and only then are the states moved on. No plant reads the state of the seeds: what grows is the
   * same whenever the ground was tilled.
   */
  static WeedCourse of(Seedlings seedlings, WeedGrowth growth, SoilCourse soil) {
    WeedCourse out = new WeedCourse(growth, soil.days());
    Seedlings.State seeds = seedlings.before();
    for (int d = 0; d < out.emerging.length; d++) {
      Seedlings.Rates rates = seedlings.rates(seeds, soil.on(d));
      seeds = seedlings.integrate(seeds, rates);
      out.emerging[d] = rates.leaving();
    }
    return out;
  }

  int days() {
    return emerging.length;
  }

  WeedGrowth growth() {
    return growth;
  }

  /** Share of the season's plants that comes up on each day; not to be written to. */
  double[] emerging() {
    return emerging;
  }
}
