package org.swathbook.tank;

import org.swathbook.catalog.Ingredient;
import org.swathbook.measure.Quantity;
import org.swathbook.program.Carrier;

/** From when on water counts as hard, and what its salts tie up. */
public final class HardWater {
  /** Calcium above which water counts as hard (common practice, no source). */
  public static final double MOST_CALCIUM_PPM = 150;

  /** Iron above which it does (common practice, no source). */
  public static final double MOST_IRON_PPM = 5;

  private HardWater() {}

  /** Calcium of a hardness as CaCO3, taken to be all of it; 0 where it was not tested. */
  public static double calciumPpm(Carrier water) {
    return AmmoniumSulfate.CALCIUM_PER_CACO3 * water.hardnessPpmCaCo3().orElse(0);
  }

  public static boolean hasMuchCalcium(Carrier water) {
    return Quantity.exceeds(calciumPpm(water), MOST_CALCIUM_PPM);
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
