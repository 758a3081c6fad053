package org.swathbook.rules.weather;

import org.swathbook.measure.Acre;
import org.swathbook.measure.Numbers;

/**
 * What of a field is lost when a strip toward a neighbor is left untreated. The book knows acres
 * and no outline, so the field is taken as a square whose sides lie north and east; toward a corner
 * two of them are kept clear.
 */
record BufferStrip(double widthFt, double acres, boolean wholeField) {
  /** A direction so far off every side lies toward a corner. */
  private static final double CORNER_DEGREES = 22.5;

  static BufferStrip of(double fieldAcres, double widthFt, double bearingDegrees) {
    double side = Math.sqrt(fieldAcres * Acre.SQUARE_FEET);
    if (widthFt >= side) {
      return new BufferStrip(widthFt, fieldAcres, true);
    }
    double off = bearingDegrees % 90;
    boolean corner = Math.min(off, 90 - off) >= CORNER_DEGREES;
    double ft2 = corner ? side * side - (side - widthFt) * (side - widthFt) : side * widthFt;
    return new BufferStrip(widthFt, ft2 / Acre.SQUARE_FEET, false);
  }

  String words() {
    long feet = (long) Math.ceil(widthFt - 1e-9);
    return wholeField
        ? "not this field: a strip of " + feet + " ft is wider than it"
        : "a strip of "
            + feet
            + " ft on that side left untreated, about "
            + Numbers.grouped(acres, 1)
            + " acres of a square field";
  }
}
