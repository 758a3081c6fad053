package org.swathbook.control;

/**
 * How a plant that lives through a foliar pass is set back: it keeps 1 - e of its height and pauses
 * 40 e °C-days. Without it no respray could work, against Haarmann et al. (2020). Values: default,
 * ours.
 */
public enum Setback {
  NONE(0, 0),
  SYSTEMIC(1, 0.4),
  CONTACT(2, 0.8);

  private final int rank;
  private final double e;

  Setback(int rank, double e) {
    this.rank = rank;
    this.e = e;
  }

  /** 0 for none, more the harder. */
  public int rank() {
    return rank;
  }

  public static Setback ofRank(int rank) {
    return rank == 0 ? NONE : rank == 1 ? SYSTEMIC : CONTACT;
  }

  public double heightKept() {
    return 1 - e;
  }

  public double pauseDegreeDays() {
    return 40 * e;
  }

  /** Least control at a plant's height, 0 to 1, from which an active works on it (default). */
  static final double WORKS = 0.5;
}
