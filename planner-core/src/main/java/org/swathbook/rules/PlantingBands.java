package org.swathbook.rules;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.book.SoilSample;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.measure.Quantity;

/** Which row of a label's days to planting holds for a rate on a field. */
public final class PlantingBands {
  private PlantingBands() {}

  /** The longest of what the field's soils ask for; empty when a soil or its row is not known. */
  public static Optional<PlantingBand> strictest(
      List<PlantingBand> bands, Field field, double lbPerAcre) {
    Optional<PlantingBand> longest = Optional.empty();
    for (SoilSample sample : SoilSample.of(field)) {
      Optional<PlantingBand> b = band(bands, sample, lbPerAcre);
      if (b.isEmpty()) {
        return Optional.empty();
      }
      if (longest.isEmpty() || b.get().days() > longest.get().days()) {
        longest = b;
      }
    }
    return longest;
  }

  /** The first band whose soil fits and whose rate is not exceeded. */
  private static Optional<PlantingBand> band(
      List<PlantingBand> bands, SoilSample sample, double lbPerAcre) {
    for (PlantingBand b : bands) {
      boolean fitsRate =
          b.upTo().map(r -> !Quantity.exceeds(lbPerAcre, r.lbPerAcre())).orElse(true);
      if (fitsRate) {
        switch (sample.fits(b.when())) {
          case YES -> {
            return Optional.of(b);
          }
          case UNKNOWN -> {
            return Optional.empty();
          }
          case NO -> {}
        }
      }
    }
    return Optional.empty();
  }
}
