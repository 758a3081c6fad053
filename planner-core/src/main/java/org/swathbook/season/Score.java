package org.swathbook.season;

import java.util.Arrays;
import org.swathbook.measure.Acre;

/**
 * What a list of passes does to a field, by weather year and weed (both by their places in the
 * trace set). Means are plain sums in the order of the years over their number.
 */
public final class Score {
  final double[] loss;
  final double[][] controlPct;
  final double[][] exposed;
  final double[][] exposedToNothing;
  final double[][] survivors;
  final double[][] allSurvivors;
  final double[][] seedReturn;
  private final double dollarsPerAcre;

  Score(int years, int weeds, double dollarsPerAcre) {
    loss = new double[years];
    controlPct = byWeed(weeds, years);
    exposed = byWeed(weeds, years);
    exposedToNothing = byWeed(weeds, years);
    survivors = byWeed(weeds, years);
    allSurvivors = byWeed(weeds, years);
    seedReturn = byWeed(weeds, years);
    this.dollarsPerAcre = dollarsPerAcre;
  }

  private static double[][] byWeed(int weeds, int years) {
    double[][] out = new double[weeds][];
    for (int w = 0; w < weeds; w++) {
      out[w] = new double[years];
    }
    return out;
  }

  public int years() {
    return loss.length;
  }

  /** Share of the yield lost in a year, 0 to 1. */
  public double lossShare(int year) {
    return loss[year];
  }

  /** Mean share of the yield lost. */
  public double lossShare() {
    return mean(loss);
  }

  /** Expected loss in dollars on one acre, not rounded. */
  public double lossDollarsPerAcre() {
    return lossShare() * dollarsPerAcre;
  }

  /** Weed-free yield times price, dollars on one acre. */
  public double weedFreeDollarsPerAcre() {
    return dollarsPerAcre;
  }

  /** Control in a year as an eye rates it, percent. */
  public double controlPct(int weed, int year) {
    return controlPct[weed][year];
  }

  public double controlPct(int weed) {
    return mean(controlPct[weed]);
  }

  public double worstYearControlPct(int weed) {
    return Arrays.stream(controlPct[weed]).min().orElse(0);
  }

  /** Share of the season's emergence exposed between planting and needed-until, 0 to 1. */
  public double exposedShare(int weed, int year) {
    return exposed[weed][year];
  }

  /** The part of it that no pass met in size either. */
  public double exposedToNothing(int weed, int year) {
    return exposedToNothing[weed][year];
  }

  /** Exposed share of the median year (the upper of two). */
  public double exposedMedian(int weed) {
    return Stats.upperMedian(exposed[weed]);
  }

  /** Exposed share that one year in five reaches or tops. */
  public double exposedWorstFifth(int weed) {
    return Stats.worstFifth(exposed[weed]);
  }

  /** Alive at harvest of those up by needed-until, plants/m². */
  public double survivorsPerM2(int weed, int year) {
    return survivors[weed][year];
  }

  /** Alive at harvest, plants/m². */
  public double allSurvivorsPerM2(int weed, int year) {
    return allSurvivors[weed][year];
  }

  /** Seeds/m² that the plants alive at harvest shed, an order of magnitude. */
  public double seedReturnPerM2(int weed, int year) {
    return seedReturn[weed][year];
  }

  /** Mean of the years, an order of magnitude. */
  public double seedReturnPerM2(int weed) {
    return mean(seedReturn[weed]);
  }

  public double survivorsPerAcre(int weed) {
    return mean(survivors[weed]) * Acre.SQUARE_METERS;
  }

  public double allSurvivorsPerAcre(int weed) {
    return mean(allSurvivors[weed]) * Acre.SQUARE_METERS;
  }

  double exposedToNothingMedian(int weed) {
    return Stats.upperMedian(exposedToNothing[weed]);
  }

  static double mean(double[] values) {
    double sum = 0;
    for (double v : values) {
      sum += v;
    }
    return sum / values.length;
  }
}
