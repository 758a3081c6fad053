package org.swathbook.growth;

import java.util.Arrays;
import java.util.List;

/**
 * What scouting changes of the cohorts of one weed in one weather year, by cohort. Cohorts that a
 * count has replaced stand first in the list; those of the count stand behind all that were up that
 * day.
 */
final class Seen {
  /** Plants per m² of a cohort that was counted, 0 for one that the model let come up. */
  final double[] counted;

  /** Day on which others were counted in its place; the greatest integer for never. */
  final int[] endsOn;

  /** Day of emergence by which the plants compete. */
  final int[] competesFrom;

  /** First of the cohorts that stand in for one that ended, and the one after the last of them. */
  final int[] heirsFrom;

  final int[] heirsTo;

  /** Days by cohort on which its size was seen, rising, and its thermal age on them, °C-days. */
  final int[][] sizedOn;

  final double[][] ageThen;

  /** Days of all scoutings of the weed, rising. */
  final int[] scoutedOn;

  Seen(List<ScoutedCell> cells, int[] scoutedOn) {
    int n = cells.size();
    this.counted = cells.stream().mapToDouble(c -> c.counted).toArray();
    this.endsOn = cells.stream().mapToInt(c -> c.endsOn).toArray();
    this.competesFrom = cells.stream().mapToInt(c -> c.competesFrom).toArray();
    this.heirsFrom = new int[n];
    this.heirsTo = new int[n];
    this.sizedOn = new int[n][];
    this.ageThen = new double[n][];
    for (int c = 0; c < n; c++) {
      ScoutedCell cell = cells.get(c);
      sizedOn[c] = cell.sizedOn.stream().mapToInt(Integer::intValue).toArray();
      ageThen[c] = cell.ageThen.stream().mapToDouble(Double::doubleValue).toArray();
      if (!cell.heirs.isEmpty()) {
        heirsFrom[c] = cells.indexOf(cell.heirs.get(0));
        heirsTo[c] = heirsFrom[c] + cell.heirs.size();
      }
    }
    this.scoutedOn = scoutedOn.clone();
  }

  /** Place of the last day on or before this one; -1 for none. */
  static int last(int[] days, int day) {
    int at = Arrays.binarySearch(days, day);
    return at >= 0 ? at : -at - 2;
  }
}
