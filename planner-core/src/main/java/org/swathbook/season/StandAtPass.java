package org.swathbook.season;

/**
 * Tells a census what of a biotype stands when a pass comes, before it does anything. Holds its
 * scratch arrays, which the census sees; one belongs to one walk.
 */
final class StandAtPass {
  private final Census census;
  private final SoilJoint soil;
  private final StruckCohorts struck;
  private final HeightClock[] clocks;
  private final double[] alive;
  private final double[] heightCm;
  private final byte[] heightClass;

  /**
   * @param struck the walk's own, as the passes before have left them
   * @param most cohorts of any weed in any year
   */
  StandAtPass(Census census, SoilJoint soil, StruckCohorts struck, HeightClock[] clocks, int most) {
    this.census = census;
    this.soil = soil;
    this.struck = struck;
    this.clocks = clocks;
    this.alive = new double[most];
    this.heightCm = new double[census.asksHeights() ? most : 0];
    this.heightClass = new byte[most];
  }

  /**
   * @param pass its place in the list of passes
   * @param cohorts of the weed in that year
   * @param view of the day of the pass
   */
  void tell(int pass, int year, int weed, int biotype, int cohorts, int harvest, DayView view) {
    soil.compute(year, weed, biotype, cohorts, pass, harvest, alive);
    for (int c = 0; c < cohorts; c++) {
      alive[c] *= struck.alive[c];
    }
    int up = view.up[weed];
    int from = view.from[weed];
    for (int c = from; c < up; c++) {
      heightClass[c] =
          struck.isSetBack(c)
              ? (byte) clocks[weed].classAt(struck.age(c, view.age[weed]))
              : view.heightClass[weed][c];
    }
    if (census.asksHeights()) {
      heights(weed, view);
    }
    census.standing(
        new StandingCohorts(pass, year, weed, biotype, from, up, alive, heightCm, heightClass));
  }

  private void heights(int weed, DayView view) {
    double[] untouchedCm = view.heightCm(weed);
    for (int c = view.from[weed]; c < view.up[weed]; c++) {
      if (!struck.isSetBack(c)) {
        heightCm[c] = untouchedCm[c];
      } else {
        double age = struck.age(c, view.age[weed]);
        heightCm[c] = alive[c] > 0 ? clocks[weed].heightCm(age) : Double.NaN;
      }
    }
  }
}
