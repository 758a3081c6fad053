package org.swathbook.season;

import org.swathbook.growth.TraceSet;

/**
 * The places of all cohorts of all biotypes in one row: by year, weed, biotype and cohort, in this
 * order.
 */
final class CohortPlaces {
  private final int[][] from;
  private final int weeds;
  private final int most;

  private CohortPlaces(int[][] from, int weeds, int most) {
    this.most = most;
    this.from = from;
    this.weeds = weeds;
  }

  static CohortPlaces of(TraceSet traces) {
    int weeds = traces.weeds().size();
    int years = traces.years().size();
    int[][] from = new int[years][weeds + 1];
    int n = 0;
    int most = 0;
    for (int y = 0; y < years; y++) {
      for (int w = 0; w < weeds; w++) {
        from[y][w] = n;
        most = Math.max(most, traces.years().get(y).cohorts(w).count());
        n += traces.years().get(y).cohorts(w).count() * traces.weeds().get(w).biotypes().size();
      }
      from[y][weeds] = n;
    }
    return new CohortPlaces(from, weeds, most);
  }

  /** Of any weed in any year. */
  int most() {
    return most;
  }

  int size() {
    return from.length == 0 ? 0 : from[from.length - 1][weeds];
  }

  /** First place of a weed in a year. */
  int from(int year, int weed) {
    return from[year][weed];
  }

  /** The place after its last. */
  int to(int year, int weed) {
    return from[year][weed + 1];
  }
}
