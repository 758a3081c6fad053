package org.swathbook.control;

import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Weed heights by half inches: class k stands for k · 1.27 cm, and a height belongs to the nearest.
 * What leaves take up is looked up by class, so all that show or search an effect see the same
 * number.
 */
public final class HeightClasses {
  public static final double STEP_CM = 1.27;

  /** Classes 0 to 96; 48 in. stands for all that is taller. */
  public static final int COUNT = 97;

  private HeightClasses() {}

  public static int of(double heightCm) {
    return (int) Math.max(0, Math.min(COUNT - 1L, Math.round(heightCm / STEP_CM)));
  }

  public static double heightCm(int heightClass) {
    return heightClass * STEP_CM;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.LEAVES,
                HeightClasses.class,
                "height classes",
                "each height to the nearest class, the last one for all above",
                "definition")
            .with("step", STEP_CM, "cm")
            .with("classes", COUNT, "")
            .given("half inches to 48 in."));
  }
}
