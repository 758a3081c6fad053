package org.swathbook.program;

import org.swathbook.catalog.Ingredient;
import org.swathbook.measure.Rate;

/** A weight of one active on an area, in the active's own basis. */
public record ActiveDose(Ingredient ingredient, Rate rate) {

  public ActiveDose {
    if (rate.isVolume() || rate.basis() != ingredient.rateBasis()) {
      throw new IllegalArgumentException(
          "a dose of " + ingredient.name() + " is a weight of its own basis, not " + rate);
    }
  }

  public double kgPerHa() {
    return rate.kgPerHa();
  }

  public double lbPerAcre() {
    return rate.lbPerAcre();
  }
}
