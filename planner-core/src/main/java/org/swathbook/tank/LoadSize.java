package org.swathbook.tank;

/** One load of a sprayer: spray in the tank and the acres that it covers. */
public record LoadSize(double gallons, double acres) {

  public LoadSize {
    if (!(gallons > 0) || !(acres > 0)) {
      throw new IllegalArgumentException(
          "a load is above zero, not " + gallons + " gal on " + acres + " acres");
    }
  }
}
