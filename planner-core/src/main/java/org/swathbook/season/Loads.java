package org.swathbook.season;

/**
 * What each cohort of each biotype still costs the crop after some passes, dollars on an acre in
 * the mean of the years. The dollars that a year loses are shared out by the plants that count.
 *
 * <p>Since the loss rises ever more slowly with the plants (it is concave and nothing without
 * them), a pass that takes a share of a cohort saves at most that share of its dollars.
 */
public final class Loads {
  private final Score score;
  final double[] dollars;

  Loads(Score score, double[] dollars) {
    this.score = score;
    this.dollars = dollars;
  }

  public Score score() {
    return score;
  }
}
