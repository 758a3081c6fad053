package org.swathbook.control;

import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

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

  /**
   * Least control of a biotype's smallest plants, 0 to 1, from which an active works on it
   * (default). Judged on the smallest, because plants that were sprayed too tall are burnt back
   * too: after a failed first pass on large weeds a second one reached them again in Haarmann et
   * al. (2020).
   */
  static final double WORKS = 0.5;

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.LEAVES,
                Setback.class,
                "survivors",
                "keep 1 − e of their height and pause p · e; the larger e where a contact partner works on that biotype (control of its smallest plants at least the figure below), else the other where another partner does",
                "default; without it no respray could work (Haarmann et al. 2020)")
            .with("e contact", 1 - CONTACT.heightKept(), "")
            .with("e else", 1 - SYSTEMIC.heightKept(), "")
            .with("p", CONTACT.pauseDegreeDays() / (1 - CONTACT.heightKept()), "°C-days")
            .with("works from", WORKS, ""));
  }
}
