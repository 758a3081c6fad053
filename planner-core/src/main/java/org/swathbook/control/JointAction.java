package org.swathbook.control;

import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Independent joint action (Colby 1967, Weeds 15: 20-22): what a plant survives of several partners
 * is the product of what it survives of each. A share of the plants that no partner of a pass
 * reaches is common to them all, so three partners at 80 % are not 99.2 %.
 */
public final class JointAction {
  private JointAction() {}

  /** Share that lives through partners with these controls, 0 to 1, all plants reached. */
  public static double survival(double... controls) {
    double p = 1;
    for (double e : controls) {
      p *= 1 - e;
    }
    return p;
  }

  /**
   * Share that lives when {@code missed} of the plants are not reached: m + (1 - m) p. A pass that
   * does nothing to a plant (p = 1) leaves it exactly untouched.
   */
  public static double withMisses(double missed, double survivalOfReached) {
    return survivalOfReached < 1 ? missed + (1 - missed) * survivalOfReached : 1;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.MIXES,
                JointAction.class,
                "joint action",
                "S = m + (1 − m) Π (1 − Ej) over sites, m the share that no partner reaches",
                "Colby 1967, Weeds 15: 20–22; m default")
            .given("m: house `missFoliar`, `missUnderCanopy`, `missSoil`"));
  }
}
