package org.swathbook.tank;

/**
 * Ammonium sulfate that ties up the salts of hard water, lb in 100 gal: 0.009 a ppm of calcium and
 * 0.042 a ppm of iron, after North Dakota State University (Nalewaja & Matysiak 1993), both figures
 * from memory. Its terms for potassium, sodium and magnesium are left out: a hardness as CaCO3 is
 * counted as calcium alone, which takes a little more than magnesium of the same hardness, and
 * sodium and potassium of an ordinary well add a tenth or two of a pound.
 */
public final class AmmoniumSulfate {
  /** ppm of calcium in a ppm of hardness as CaCO3: 40.08 of 100.09 by weight. */
  public static final double CALCIUM_PER_CACO3 = 0.4;

  private static final double LB_PER_CALCIUM_PPM = 0.009;
  private static final double LB_PER_IRON_PPM = 0.042;

  private AmmoniumSulfate() {}

  public static double lbPer100Gal(double hardnessPpmCaCo3, double ironPpm) {
    return LB_PER_CALCIUM_PPM * CALCIUM_PER_CACO3 * hardnessPpmCaCo3 + LB_PER_IRON_PPM * ironPpm;
  }
}
