package org.swathbook.season;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.control.FoliarTable;
import org.swathbook.control.Setback;
import org.swathbook.season.loss.CountCosts;

/**
 * What passes have done through leaves to the cohorts of one biotype of a weed in one year: the
 * share of each that is alive, what its dead have cost the crop, and how far the living are set
 * back. A walk's own arrays, filled anew for each biotype; they belong to one thread.
 */
final class StruckCohorts {
  private static final double[] PAUSE =
      Arrays.stream(Setback.values()).mapToDouble(Setback::pauseDegreeDays).toArray();

  private final HouseRules house;

  /** Of the plants that the soil lets live, the share that the leaves' actives have left. */
  final double[] alive;

  /** Of what a plant alive would cost, what the dead of a cohort have cost by their deaths. */
  final double[] cost;

  /** Whether an effective pass met the cohort while it was small enough. */
  final boolean[] met;

  /** Thermal age that the living have lost, and the age below which they never fall. */
  private final double[] delay;

  private final double[] floor;

  /** No cohort from here on has been set back. */
  private int setBackTo;

  /**
   * @param most cohorts of any weed in any year
   */
  StruckCohorts(HouseRules house, int most) {
    this.house = house;
    alive = new double[most];
    cost = new double[most];
    met = new boolean[most];
    delay = new double[most];
    floor = new double[most];
  }

  /** As many cohorts, untouched. */
  void begin(int cohorts) {
    Arrays.fill(alive, 0, cohorts, 1);
    Arrays.fill(cost, 0, cohorts, 0);
    Arrays.fill(met, 0, cohorts, false);
    forgetSetbacks();
  }

  /** A size that was seen already holds what earlier passes had set back. */
  void forgetSetbacks() {
    Arrays.fill(delay, 0, setBackTo, 0);
    setBackTo = 0;
  }

  boolean isSetBack(int cohort) {
    return delay[cohort] > 0;
  }

  /** Thermal age of a cohort that is set back. */
  double age(int cohort, double[] ages) {
    return Math.max(floor[cohort], ages[cohort] - delay[cohort]);
  }

  /**
   * One pass.
   *
   * @param already share of their cost that plants have cost by this day, where none were counted
   */
  void strike(
      FoliarTable table,
      int biotype,
      DayView view,
      int weed,
      HeightClock clock,
      double already,
      @Nullable CountCosts costs) {
    int from = view.from[weed];
    int up = view.up[weed];
    double[] ages = view.age[weed];
    byte[] classes = view.heightClass[weed];
    double[] survival = table.survival(biotype);
    double miss = view.canopy ? house.missUnderCanopy() : house.missFoliar();
    double effective = 1 - house.effectiveSite();
    int rank = table.setbackRank(biotype);
    double[] fallTo = clock.agesAfter(rank);
    int setBackBefore = setBackTo;
    for (int c = from; c < up; c++) {
      double now = ages[c];
      int k = classes[c];
      if (c < setBackBefore && delay[c] > 0) {
        now = Math.max(floor[c], now - delay[c]);
        k = clock.classAt(now);
      }
      double lives = survival[k];
      if (lives < 1) {
        double before = alive[c];
        double after = before * (miss + (1 - miss) * lives);
        alive[c] = after;
        cost[c] += (before - after) * (costs == null ? already : costs.since(c, already));
        met[c] |= lives <= effective;
        if (rank > 0) {
          double least = Math.min(now, fallTo[k]);
          floor[c] = least;
          delay[c] = ages[c] - least + PAUSE[rank];
          setBackTo = Math.max(setBackTo, c + 1);
        }
      }
    }
  }
}
