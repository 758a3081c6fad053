package org.swathbook.tank;

import org.swathbook.catalog.Ingredient;
import org.swathbook.measure.Quantity;
import org.swathbook.program.Carrier;

/** From when on water counts as hard, and what its salts tie up. */
public final class HardWater {
  /**
   * Hardness, ppm CaCO3, above which water counts as hard for weak acids. Guides and laboratories
   * state hardness so, Purdue University's among them (from memory); it is 60 ppm of calcium.
   */
  public static final double MOST_HARDNESS_PPM = 150;

  /** Iron above which it does (common practice, no source). */
  public static final double MOST_IRON_PPM = 5;

  private HardWater() {}

  /** Whether its hardness, where that was tested, is more than that. */
  public static boolean isHard(Carrier water) {
    return Quantity.exceeds(water.hardnessPpmCaCo3().orElse(0), MOST_HARDNESS_PPM);
  }

  public static boolean hasMuchIron(Carrier water) {
    return Quantity.exceeds(water.ironPpm().orElse(0), MOST_IRON_PPM);
  }

  /** Sites 1, 9 and 10, and salts of site 4, where they work through leaves. */
  public static boolean tiesUp(Ingredient active, String formulation) {
    int site = active.site().number();
    boolean salt = formulation.equals("SL");
    return active.hasFoliarActivity()
        && (site == 1 || site == 9 || site == 10 || site == 4 && salt);
  }
}
