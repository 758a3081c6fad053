package org.swathbook.tank;

import org.swathbook.measure.Dimension;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;

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

  /** Of the liquid that is sold, 34 % by weight (from memory). */
  private static final double LB_PER_GALLON = 3.4;

  /** What labels ask for at least in hard water, lb in 100 gal (from memory). */
  private static final double LEAST_LB = 8.5;

  private static final double LB_PER_CALCIUM_PPM = 0.009;
  private static final double LB_PER_IRON_PPM = 0.042;

  private AmmoniumSulfate() {}

  /** The salt in an amount of it, poured dry or as the liquid, lb. */
  public static double pounds(Quantity amount) {
    return amount.unit().dimension() == Dimension.MASS
        ? amount.in(Unit.POUND)
        : LB_PER_GALLON * amount.in(Unit.GALLON);
  }

  /** What hard water takes and never less than labels ask for, to a tenth of a pound. */
  static double practicalLbPer100Gal(double hardnessPpmCaCo3, double ironPpm) {
    return Math.max(LEAST_LB, Math.ceil(10 * lbPer100Gal(hardnessPpmCaCo3, ironPpm)) / 10);
  }

  public static double lbPer100Gal(double hardnessPpmCaCo3, double ironPpm) {
    return LB_PER_CALCIUM_PPM * CALCIUM_PER_CACO3 * hardnessPpmCaCo3 + LB_PER_IRON_PPM * ironPpm;
  }
}
