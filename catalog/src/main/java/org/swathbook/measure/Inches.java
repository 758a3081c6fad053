package org.swathbook.measure;

/**
 * Inches, which labels and growers speak, of the centimetres and millimetres that are reckoned in.
 * An inch is 25.4 mm by definition (NIST Handbook 44, Appendix C).
 */
public final class Inches {
  private static final double CM = 2.54;
  private static final double MM = 25.4;

  private Inches() {}

  public static double ofCm(double cm) {
    return cm / CM;
  }

  public static double ofMm(double mm) {
    return mm / MM;
  }

  public static double toCm(double inches) {
    return inches * CM;
  }

  public static double toMm(double inches) {
    return inches * MM;
  }
}
