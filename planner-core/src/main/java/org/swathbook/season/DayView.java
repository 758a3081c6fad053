package org.swathbook.season;

import org.jspecify.annotations.Nullable;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.season.loss.Removal;

/**
 * The weeds of one year on one day as nothing but weather left them: how many cohorts, how tall.
 */
final class DayView {
  /** First cohort that stands: a count has replaced those before it. */
  final int[] from;

  final int[] up;

  /** How often each weed has been scouted. */
  final int[] scoutings;

  final double[][] age;
  private final HeightClock[] clocks;

  /** By weed, computed when first asked for; two threads compute the same. */
  private final @Nullable Heights[] heights;

  final byte[][] heightClass;

  final boolean canopy;
  final double costBare;
  final double costAfterResidual;

  DayView(SeasonTrace trace, int day, HeightClock[] clocks, Removal removal) {
    int weeds = trace.weedCount();
    from = new int[weeds];
    up = new int[weeds];
    scoutings = new int[weeds];
    this.clocks = clocks;
    heights = new Heights[weeds];
    age = new double[weeds][];
    heightClass = new byte[weeds][];
    for (int w = 0; w < weeds; w++) {
      CohortSet cohorts = trace.cohorts(w);
      int n = upBy(cohorts, day);
      from[w] = cohorts.endedBy(day);
      up[w] = n;
      scoutings[w] = cohorts.scoutingsBy(day);
      age[w] = new double[n];
      heightClass[w] = new byte[n];
      for (int c = from[w]; c < n; c++) {
        age[w][c] = cohorts.age(c, day);
        heightClass[w][c] = (byte) clocks[w].classAt(age[w][c]);
      }
    }
    canopy = day >= trace.canopyDay();
    boolean cropUp = day >= trace.emergenceDay();
    double t = trace.leafStages(day);
    costBare = cropUp ? removal.share(t, false) : 0;
    costAfterResidual = cropUp ? removal.share(t, true) : 0;
  }

  /** A final field, so that another thread sees what is in it. */
  private static final class Heights {
    private final double[] cm;

    Heights(double[] cm) {
      this.cm = cm;
    }
  }

  /** By cohort; of those that stand. Not to be written to. */
  double[] heightCm(int weed) {
    Heights found = heights[weed];
    if (found == null) {
      double[] cm = new double[up[weed]];
      for (int c = from[weed]; c < cm.length; c++) {
        cm[c] = clocks[weed].heightCm(age[weed][c]);
      }
      found = new Heights(cm);
      heights[weed] = found;
    }
    return found.cm;
  }

  /** Number of cohorts that are up by the end of a day. */
  static int upBy(CohortSet cohorts, int day) {
    int n = 0;
    while (n < cohorts.count() && cohorts.emergedOn(n) <= day) {
      n++;
    }
    return n;
  }
}
