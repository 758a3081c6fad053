package org.swathbook.season;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.swathbook.control.FoliarTable;
import org.swathbook.control.Setback;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.TraceSet;

/**
 * The least thermal age, and so the least height, that plants of a cohort can have on a day when
 * any of some passes may have set them back before: no program of these passes meets them smaller.
 */
final class LowestAges {
  private static final List<Integer> RANKS =
      List.of(Setback.SYSTEMIC.rank(), Setback.CONTACT.rank());

  private final Kernel kernel;
  private final List<PassRow> rows;

  /** By row and year; -1 where there is no such day. */
  private final int[][] days;

  /** By row and weed, rank of the hardest setback of all its passes. */
  private final int[][] hardest;

  /** By row, year, weed and cohort. */
  private final double[][][][] ages;

  private LowestAges(Kernel kernel, List<PreparedPass> passes) {
    TraceSet traces = kernel.traces();
    int years = traces.years().size();
    this.kernel = kernel;
    this.rows = PassRow.of(passes);
    this.days = new int[rows.size()][years];
    this.hardest = new int[rows.size()][traces.weeds().size()];
    for (int[] d : days) {
      Arrays.fill(d, -1);
    }
    for (PreparedPass pass : passes) {
      int row = row(pass);
      for (int y = 0; y < years; y++) {
        if (pass.isMissed(y)) {
          continue;
        }
        days[row][y] = pass.day(y);
        for (int w = 0; w < hardest[row].length; w++) {
          FoliarTable table = pass.foliar(y, w, Optional.empty());
          for (int b = 0; b < traces.weeds().get(w).biotypes().size(); b++) {
            hardest[row][w] = Math.max(hardest[row][w], table.setbackRank(b));
          }
        }
      }
    }
    this.ages = natural();
  }

  private double[][][][] natural() {
    TraceSet traces = kernel.traces();
    double[][][][] out = new double[rows.size()][traces.years().size()][traces.weeds().size()][];
    for (int r = 0; r < out.length; r++) {
      for (int y = 0; y < traces.years().size(); y++) {
        for (int w = 0; w < traces.weeds().size(); w++) {
          CohortSet set = traces.years().get(y).cohorts(w);
          out[r][y][w] = new double[set.count()];
          for (int c = 0; c < set.count() && days[r][y] >= 0; c++) {
            out[r][y][w][c] = set.age(c, days[r][y]);
          }
        }
      }
    }
    return out;
  }

  /** For all programs made of some passes. */
  static LowestAges of(Kernel kernel, List<PreparedPass> passes) {
    LowestAges out = new LowestAges(kernel, passes);
    // In their order, each row finds all that passes before the earlier ones have done.
    out.setBack(IntStream.range(0, out.rows.size()), 0);
    return out;
  }

  /**
   * The same for programs of fewer passes.
   *
   * @param mostBefore passes at most before the one that meets the plants
   * @param apart days at least from one pass to come to the next
   */
  static LowestAges of(Kernel kernel, List<PreparedPass> passes, int mostBefore, int apart) {
    LowestAges out = new LowestAges(kernel, passes);
    int last = out.rows.size() - 1;
    for (int more = 0; more < mostBefore; more++) {
      // From the last on, each finds the earlier ones without the pass that is added.
      out.setBack(IntStream.rangeClosed(0, last).map(r -> last - r), apart);
    }
    return out;
  }

  /** Lets one more pass come before each row, in some order of them. */
  private void setBack(IntStream order, int apart) {
    order.forEach(
        row -> {
          int[] before =
              IntStream.range(0, row).filter(earlier -> mayFollow(earlier, row, apart)).toArray();
          for (int y = 0; y < days[row].length; y++) {
            for (int w = 0; w < hardest[row].length && days[row][y] >= 0; w++) {
              setBack(row, before, y, w);
            }
          }
        });
  }

  /** What is made stands where it stands, however near. */
  private boolean mayFollow(int earlier, int row, int apart) {
    return rows.get(earlier).made()
        || rows.get(row).made()
        || !rows.get(earlier).planned().isAfter(rows.get(row).planned().minusDays(apart));
  }

  private void setBack(int row, int[] before, int year, int weed) {
    CohortSet set = kernel.traces().years().get(year).cohorts(weed);
    double[] now = ages[row][year][weed];
    for (int c = 0; c < now.length; c++) {
      now[c] = Math.min(now[c], lowest(set, c, row, before, year, weed));
    }
  }

  private double lowest(CohortSet set, int cohort, int row, int[] before, int year, int weed) {
    HeightClock clock = kernel.clock(weed);
    double natural = set.age(cohort, days[row][year]);
    double out = natural;
    for (int earlier : before) {
      int day = days[earlier][year];
      if (day < set.emergedOn(cohort) || hardest[earlier][weed] == 0) {
        continue;
      }
      for (int rank : RANKS) {
        if (rank <= hardest[earlier][weed]) {
          double then = ages[earlier][year][weed][cohort];
          double floor = Math.min(then, clock.ageAfter(rank, clock.classAt(then)));
          double grown = natural - set.age(cohort, day) - Setback.ofRank(rank).pauseDegreeDays();
          out = Math.min(out, Math.max(floor, floor + grown));
        }
      }
    }
    return out;
  }

  /** Place of the passes of a pass's date: made ones and those to come apart. */
  int row(PreparedPass pass) {
    return PassRow.place(rows, pass);
  }

  double age(int row, int year, int weed, int cohort) {
    return ages[row][year][weed][cohort];
  }
}
