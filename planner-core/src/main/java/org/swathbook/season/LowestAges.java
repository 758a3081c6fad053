package org.swathbook.season;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.swathbook.control.FoliarTable;
import org.swathbook.control.Setback;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.TraceSet;

/**
 * The least thermal age, and so the least height, that plants of a cohort can have on a day when
 * any of some passes may have set them back before: no program of these passes meets them smaller.
 */
final class LowestAges {
  private final double[][][][] ages;

  /**
   * For all programs made of some passes.
   *
   * @param dates of the passes, rising
   */
  static LowestAges of(Kernel kernel, List<PreparedPass> passes, List<LocalDate> dates) {
    TraceSet traces = kernel.traces();
    int years = traces.years().size();
    int[][] days = new int[dates.size()][years];
    int[][] hardest = new int[dates.size()][traces.weeds().size()];
    for (int[] d : days) {
      Arrays.fill(d, -1);
    }
    for (PreparedPass pass : passes) {
      int date = dates.indexOf(pass.planned());
      for (int y = 0; y < years; y++) {
        if (pass.isMissed(y)) {
          continue;
        }
        days[date][y] = pass.day(y);
        for (int w = 0; w < hardest[date].length; w++) {
          FoliarTable table = pass.foliar(y, w, Optional.empty());
          for (int b = 0; b < traces.weeds().get(w).biotypes().size(); b++) {
            hardest[date][w] = Math.max(hardest[date][w], table.setbackRank(b));
          }
        }
      }
    }
    return new LowestAges(kernel, days, hardest);
  }

  /**
   * @param days by date of the passes and year, rising by date; -1 where there is no such day
   * @param hardest by date and weed, rank of the hardest setback of all passes on that date
   */
  LowestAges(Kernel kernel, int[][] days, int[][] hardest) {
    TraceSet traces = kernel.traces();
    ages = new double[days.length][traces.years().size()][traces.weeds().size()][];
    for (int y = 0; y < traces.years().size(); y++) {
      for (int w = 0; w < traces.weeds().size(); w++) {
        CohortSet set = traces.years().get(y).cohorts(w);
        for (int d = 0; d < days.length; d++) {
          ages[d][y][w] = new double[set.count()];
          for (int c = 0; c < set.count() && days[d][y] >= 0; c++) {
            ages[d][y][w][c] = lowest(kernel.clock(w), set, c, days, hardest, d, y, w);
          }
        }
      }
    }
  }

  private double lowest(
      HeightClock clock,
      CohortSet set,
      int cohort,
      int[][] days,
      int[][] hardest,
      int date,
      int year,
      int weed) {
    double natural = set.age(cohort, days[date][year]);
    double out = natural;
    for (int before = 0; before < date; before++) {
      int day = days[before][year];
      if (day < set.emergedOn(cohort) || hardest[before][weed] == 0) {
        continue;
      }
      for (int rank : List.of(Setback.SYSTEMIC.rank(), Setback.CONTACT.rank())) {
        if (rank <= hardest[before][weed]) {
          double then = ages[before][year][weed][cohort];
          double floor = Math.min(then, clock.ageAfter(rank, clock.classAt(then)));
          double grown = natural - set.age(cohort, day) - Setback.ofRank(rank).pauseDegreeDays();
          out = Math.min(out, Math.max(floor, floor + grown));
        }
      }
    }
    return out;
  }

  double age(int date, int year, int weed, int cohort) {
    return ages[date][year][weed][cohort];
  }
}
