package org.swathbook.season;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.swathbook.control.JointAction;

/**
 * How much of a weed's emergence is exposed at least, whatever passes of a list come after some.
 *
 * <p>In the soil the strongest active of each site counts, and more of any never lets more plants
 * up. So no further passes leave less exposed than all of them together, each cohort held by the
 * strongest of each site that any of them puts down: the share that comes up with them is no more
 * than with some of them, a day on which they hold too little is one on which some of them do too,
 * and the median and any other rank over the years follow. Where plants were counted, cohorts stand
 * for others; such years bound nothing here.
 */
public final class ExposureBounds {
  /** More than all rounding of products and sums, as a share. */
  private static final double ROUNDING = 1e-9;

  private final Kernel kernel;
  private final List<PassRow> rows;
  private final int[] sites;

  /** By row, year, weed, biotype, site and cohort: the strongest control put down after it. */
  private final double[][][][][][] later;

  private ExposureBounds(Kernel kernel, List<PassRow> rows, int[] sites) {
    this.kernel = kernel;
    this.rows = rows;
    this.sites = sites;
    this.later =
        new double[rows.size()][kernel.traces().years().size()][kernel.traces().weeds().size()][][]
            [];
  }

  /**
   * For programs made of these passes.
   *
   * @param weeds the places of those that are asked about
   */
  public static ExposureBounds of(Kernel kernel, List<PreparedPass> passes, List<Integer> weeds) {
    TreeSet<Integer> sites = new TreeSet<>();
    for (PreparedPass p : passes) {
      for (int j = 0; j < p.soilDoses(); j++) {
        sites.add(p.soilSite(j));
      }
    }
    List<PassRow> rows = PassRow.of(passes);
    ExposureBounds out =
        new ExposureBounds(kernel, rows, sites.stream().mapToInt(Integer::intValue).toArray());
    for (int y = 0; y < kernel.traces().years().size(); y++) {
      for (int w : weeds) {
        double[][][] strongest = out.none(y, w);
        for (int r = rows.size() - 1; r >= 0; r--) {
          out.later[r][y][w] = copy(strongest);
          for (PreparedPass p : passes) {
            if (rows.get(r).holds(p)) {
              out.raise(strongest, p, y, w);
            }
          }
        }
      }
    }
    return out;
  }

  private double[][][] none(int year, int weed) {
    int biotypes = kernel.traces().weeds().get(weed).biotypes().size();
    return new double[biotypes][sites.length][kernel.cell(year, weed).cohorts];
  }

  private static double[][][] copy(double[][][] of) {
    double[][][] out = new double[of.length][][];
    for (int b = 0; b < out.length; b++) {
      out[b] = new double[of[b].length][];
      for (int s = 0; s < out[b].length; s++) {
        out[b][s] = of[b][s].clone();
      }
    }
    return out;
  }

  private void raise(double[][][] strongest, PreparedPass pass, int year, int weed) {
    if (pass.day(year) > kernel.traces().years().get(year).harvestDay()) {
      return;
    }
    for (int j = 0; j < pass.soilDoses(); j++) {
      int site = Arrays.binarySearch(sites, pass.soilSite(j));
      for (int b = 0; b < strongest.length; b++) {
        pass.soil(year, j, weed).raise(strongest[b][site], pass.keepsInSoil(j, weed, b));
      }
    }
  }

  /**
   * Share exposed at least in each year, 0 to 1.
   *
   * @param first the first passes, in the order of their dates, all of the list
   * @param further whether any may come after them
   */
  public Exposed least(List<PreparedPass> first, int weed, boolean further) {
    int years = kernel.traces().years().size();
    double[] out = new double[years];
    int row = first.isEmpty() ? -1 : PassRow.place(rows, first.get(first.size() - 1));
    for (int y = 0; y < years; y++) {
      YearWeed cell = kernel.cell(y, weed);
      if (cell.costs == null && cell.totalEmergence > 0) {
        double[][][] strongest = further && row >= 0 ? copy(later[row][y][weed]) : none(y, weed);
        for (PreparedPass p : first) {
          raise(strongest, p, y, weed);
        }
        if (!further || row >= 0) {
          out[y] = exposed(cell, strongest);
        }
      }
    }
    return new Exposed(Stats.upperMedian(out), Stats.worstFifth(out));
  }

  private double exposed(YearWeed cell, double[][][] strongest) {
    double sum = 0;
    for (int c = cell.exposedFrom; c < cell.exposedTo; c++) {
      double escapes = 0;
      for (int b = 0; b < strongest.length; b++) {
        double lives = 1;
        for (double[] bySite : strongest[b]) {
          lives *= 1 - bySite[c];
        }
        escapes += cell.shares[b] * JointAction.withMisses(kernel.house().missSoil(), lives);
      }
      if (1 - escapes < kernel.house().layerThreshold() - ROUNDING) {
        sum += cell.emergence[c] * escapes;
      }
    }
    return Math.max(0, sum / cell.totalEmergence - ROUNDING);
  }

  /**
   * Share of the season's emergence that is exposed, 0 to 1.
   *
   * @param median of the median year (the upper of two)
   * @param worstFifth what one year in five reaches or tops
   */
  public record Exposed(double median, double worstFifth) {}
}
