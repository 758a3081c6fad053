package org.swathbook.season;

import java.time.LocalDate;
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
  private final double[][][][] ages;

  /**
   * For all programs made of some passes.
   *
   * @param dates of the passes, rising
   */
  static LowestAges of(Kernel kernel, List<PreparedPass> passes, List<LocalDate> dates) {
    return of(kernel, passes, dates, dates.size(), 0);
  }

  /**
   * The same for programs of fewer passes.
   *
   * @param mostBefore passes at most before the one that meets the plants
   * @param apart days at least from one pass to the next
   */
  static LowestAges of(
      Kernel kernel, List<PreparedPass> passes, List<LocalDate> dates, int mostBefore, int apart) {
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
    int[] before = new int[dates.size()];
    for (int d = 0; d < before.length; d++) {
      LocalDate last = dates.get(d).minusDays(apart);
      while (before[d] < d && !dates.get(before[d]).isAfter(last)) {
        before[d]++;
      }
    }
    return new LowestAges(kernel, days, hardest, before, mostBefore);
  }

  /**
   * @param days by date of the passes and year, rising by date; -1 where there is no such day
   * @param hardest by date and weed, rank of the hardest setback of all passes on that date
   * @param before by date, how many dates lie so far before it that one pass may follow the other
   */
  private LowestAges(Kernel kernel, int[][] days, int[][] hardest, int[] before, int mostBefore) {
    TraceSet traces = kernel.traces();
    ages = new double[days.length][traces.years().size()][traces.weeds().size()][];
    for (int y = 0; y < traces.years().size(); y++) {
      for (int w = 0; w < traces.weeds().size(); w++) {
        CohortSet set = traces.years().get(y).cohorts(w);
        for (int d = 0; d < days.length; d++) {
          ages[d][y][w] = natural(set, days[d][y]);
        }
        int n = days.length;
        if (mostBefore >= n) {
          // In their order, each date finds all that passes before the earlier ones have done.
          setBack(kernel.clock(w), set, days, hardest, before, y, w, IntStream.range(0, n));
        }
        for (int passes = 0; passes < mostBefore && mostBefore < n; passes++) {
          // From the last on, each finds the earlier dates without the pass that is added.
          IntStream back = IntStream.range(0, n).map(d -> n - 1 - d);
          setBack(kernel.clock(w), set, days, hardest, before, y, w, back);
        }
      }
    }
  }

  private static double[] natural(CohortSet set, int day) {
    double[] out = new double[set.count()];
    for (int c = 0; c < out.length && day >= 0; c++) {
      out[c] = set.age(c, day);
    }
    return out;
  }

  /** Lets one more pass come before each date, in an order of the dates. */
  private void setBack(
      HeightClock clock,
      CohortSet set,
      int[][] days,
      int[][] hardest,
      int[] before,
      int year,
      int weed,
      IntStream order) {
    order.forEach(
        d -> {
          double[] now = ages[d][year][weed];
          for (int c = 0; c < now.length && days[d][year] >= 0; c++) {
            double lowest = lowest(clock, set, c, days, hardest, d, before[d], year, weed);
            now[c] = Math.min(now[c], lowest);
          }
        });
  }

  private double lowest(
      HeightClock clock,
      CohortSet set,
      int cohort,
      int[][] days,
      int[][] hardest,
      int date,
      int before,
      int year,
      int weed) {
    double natural = set.age(cohort, days[date][year]);
    double out = natural;
    for (int earlier = 0; earlier < before; earlier++) {
      int day = days[earlier][year];
      if (day < set.emergedOn(cohort) || hardest[earlier][weed] == 0) {
        continue;
      }
      for (int rank : List.of(Setback.SYSTEMIC.rank(), Setback.CONTACT.rank())) {
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

  double age(int date, int year, int weed, int cohort) {
    return ages[date][year][weed][cohort];
  }
}
