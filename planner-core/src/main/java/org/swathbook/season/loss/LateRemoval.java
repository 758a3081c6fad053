package org.swathbook.season.loss;

import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.catalog.Crop;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * The crop's leaf stage by which weeds must be out: what they have cost by then is 5 % (critical
 * times: Knezevic et al. 2003).
 */
public final class LateRemoval {
  private static final double CRITICAL = 0.05;

  private LateRemoval() {}

  /**
   * Whether a day is past the critical time.
   *
   * @param leafStages of the crop on that day
   * @param afterResidual whether a layer held when the crop came up
   */
  public static boolean isLate(
      Crop crop, OptionalDouble rowCm, double leafStages, boolean afterResidual) {
    return Removal.of(crop, rowCm).share(leafStages, afterResidual) > CRITICAL * (1 + 1e-9);
  }

  /** What the reference prints. */
  public static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.COST,
                LateRemoval.class,
                "critical time",
                "the leaf stage at which ρ is",
                "Knezevic et al. 2003")
            .with("ρ", CRITICAL, ""));
  }
}
