package org.swathbook.season;

import java.util.Arrays;
import org.swathbook.book.HouseRules;

/**
 * Of the emergence of one weed in one year the share that came up while no layer held, all biotypes
 * together. Holds its scratch arrays, filled anew for each weed and year; one belongs to one walk.
 */
final class ExposedEmergence {
  private final double layerThreshold;

  /** Of each cohort the share that the soil lets live, and of it what no pass met small enough. */
  private final double[] escapes;

  private final double[] escapesUnmet;

  private double share;
  private double shareUnmet;

  /**
   * @param most cohorts of any weed in any year
   */
  ExposedEmergence(HouseRules house, int most) {
    this.layerThreshold = house.layerThreshold();
    this.escapes = new double[most];
    this.escapesUnmet = new double[most];
  }

  void begin(YearWeed cell) {
    Arrays.fill(escapes, cell.exposedFrom, cell.exposedTo, 0);
    Arrays.fill(escapesUnmet, cell.exposedFrom, cell.exposedTo, 0);
  }

  /**
   * Adds a biotype.
   *
   * @param ofAll its share of the weed's plants
   * @param inSoil by cohort the share that the soil lets live
   * @param met by cohort whether an effective pass met it while it was small enough
   */
  void add(YearWeed cell, double ofAll, double[] inSoil, boolean[] met) {
    for (int c = cell.exposedFrom; c < cell.exposedTo; c++) {
      double lives = ofAll * inSoil[c];
      escapes[c] += lives;
      if (!met[c]) {
        escapesUnmet[c] += lives;
      }
    }
  }

  /** Sums up what was added. */
  void close(YearWeed cell) {
    double exposed = 0;
    double unmet = 0;
    for (int c = cell.exposedFrom; c < cell.exposedTo; c++) {
      if (1 - escapes[c] < layerThreshold) {
        exposed += cell.emergence[c] * escapes[c];
        unmet += cell.emergence[c] * escapesUnmet[c];
      }
    }
    boolean any = cell.totalEmergence > 0;
    share = any ? exposed / cell.totalEmergence : 0;
    shareUnmet = any ? unmet / cell.totalEmergence : 0;
  }

  double share() {
    return share;
  }

  /** The part of it that no pass through leaves met small enough either. */
  double shareUnmet() {
    return shareUnmet;
  }
}
