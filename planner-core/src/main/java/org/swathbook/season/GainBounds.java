package org.swathbook.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.swathbook.control.FoliarTable;
import org.swathbook.control.JointAction;
import org.swathbook.control.SoilEffect;
import org.swathbook.growth.TraceSet;

/**
 * What passes can save at most, whatever other passes of the same list stand beside them.
 *
 * <p>A pass takes of each cohort no more than it would take alone of plants as small as any program
 * can make them; and what several passes take together is at most the sum of what they take alone,
 * because kills multiply. The one share that the soil misses in a season leaves more than one a
 * pass: {@code (m + (1 - m) p q) / (m + (1 - m) p)} falls with p and is {@code m + (1 - m) q} at p
 * = 1. So the dollars that {@link Loads} puts on the cohorts times these shares bound the gain from
 * above. Where plants were counted, a kill can give back more than the plants' own dollars: of such
 * years a pass may save all.
 */
public final class GainBounds {
  private final Kernel kernel;
  private final double[][] shares;
  private final boolean[][] savesAll;
  private final int[] yearFrom;

  private GainBounds(Kernel kernel, double[][] shares, boolean[][] savesAll) {
    this.kernel = kernel;
    this.shares = shares;
    this.savesAll = savesAll;
    this.yearFrom = new int[kernel.traces().years().size() + 1];
    for (int y = 0; y < yearFrom.length - 1; y++) {
      yearFrom[y] = kernel.cohorts().from(y, 0);
    }
    yearFrom[yearFrom.length - 1] = kernel.cohorts().size();
  }

  /** For all programs made of these passes. */
  public static GainBounds of(Kernel kernel, List<PreparedPass> passes) {
    TraceSet traces = kernel.traces();
    int years = traces.years().size();
    LowestAges ages = LowestAges.of(kernel, passes);
    double[][] shares = new double[passes.size()][];
    boolean[][] savesAll = new boolean[passes.size()][years];
    for (int p = 0; p < shares.length; p++) {
      PreparedPass pass = passes.get(p);
      shares[p] = new double[kernel.cohorts().size()];
      for (int y = 0; y < years; y++) {
        boolean made = !pass.isMissed(y) && pass.day(y) <= traces.years().get(y).harvestDay();
        for (int w = 0; w < traces.weeds().size() && made; w++) {
          savesAll[p][y] |= kernel.cell(y, w).costs != null;
          fill(kernel, shares[p], pass, ages, ages.row(pass), y, w);
        }
      }
    }
    return new GainBounds(kernel, shares, savesAll);
  }

  private static void fill(
      Kernel kernel, double[] out, PreparedPass pass, LowestAges ages, int row, int y, int w) {
    int cohorts = kernel.cell(y, w).cohorts;
    DayView view = pass.view(y);
    double miss = view.canopy ? kernel.house().missUnderCanopy() : kernel.house().missFoliar();
    double saved = 1 - Math.min(view.costBare, view.costAfterResidual);
    FoliarTable table = kernel.foliar(pass, y, w);
    int biotypes = kernel.traces().weeds().get(w).biotypes().size();
    int at = kernel.cohorts().from(y, w);
    for (int b = 0; b < biotypes; b++) {
      double[] lives = soilLives(pass, y, w, b, cohorts);
      for (int c = 0; c < cohorts; c++) {
        double left = JointAction.withMisses(kernel.house().missSoil(), lives[c]);
        if (c >= view.from[w] && c < view.up[w]) {
          int k = kernel.clock(w).classAt(ages.age(row, y, w, c));
          left *= 1 - (1 - miss) * (1 - table.survival(b, k)) * saved;
        }
        out[at++] = 1 - left;
      }
    }
  }

  /** What lives of each cohort of all that one pass lays into the soil, none missed by it. */
  private static double[] soilLives(PreparedPass pass, int y, int w, int b, int cohorts) {
    double[] lives = new double[cohorts];
    Arrays.fill(lives, 1);
    List<Integer> done = new ArrayList<>();
    for (int j = 0; j < pass.soilDoses(); j++) {
      if (done.contains(pass.soilSite(j))) {
        continue;
      }
      done.add(pass.soilSite(j));
      double[] strongest = new double[cohorts];
      for (int other = j; other < pass.soilDoses(); other++) {
        if (pass.soilSite(other) == pass.soilSite(j)) {
          SoilEffect e = pass.soil(y, other, w);
          e.raise(strongest, pass.keepsInSoil(other, w, b));
        }
      }
      for (int c = 0; c < cohorts; c++) {
        lives[c] *= 1 - strongest[c];
      }
    }
    return lives;
  }

  /** Dollars on an acre, mean of the years, that a pass of the list saves at most after others. */
  public double mostSaved(int pass, Loads after) {
    double sum = 0;
    for (int y = 0; y < yearFrom.length - 1; y++) {
      sum +=
          savesAll[pass][y]
              ? after.score().lossShare(y) * after.score().weedFreeDollarsPerAcre() / years()
              : dot(shares[pass], after.dollars, yearFrom[y], yearFrom[y + 1]);
    }
    return sum;
  }

  private int years() {
    return kernel.traces().years().size();
  }

  /** Four sums at a time, so that the processor need not wait for each. */
  private static double dot(double[] a, double[] b, int from, int to) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int i = from;
    for (; i + 3 < to; i += 4) {
      s0 += a[i] * b[i];
      s1 += a[i + 1] * b[i + 1];
      s2 += a[i + 2] * b[i + 2];
      s3 += a[i + 3] * b[i + 3];
    }
    for (; i < to; i++) {
      s0 += a[i] * b[i];
    }
    return s0 + s1 + (s2 + s3);
  }
}
