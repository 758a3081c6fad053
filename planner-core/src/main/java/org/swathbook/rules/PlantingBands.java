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

  /**
   * What at least is to be waited for when more goes out than any band of the field's soils is for:
   * the wait of the highest rate there is.
   *
   * @return empty when a band is for the rate, or some soil has none
   */
  public static Optional<PlantingBand> beyond(
      List<PlantingBand> bands, Field field, double lbPerAcre) {
    List<PlantingBand> most =
        bands.stream()
            .filter(
                b ->
                    b.upTo().isPresent()
                        && bands.stream().noneMatch(o -> o.when().equals(b.when()) && above(o, b)))
            .toList();
    boolean exceeded =
        bands.stream()
            .allMatch(
                b ->
                    b.upTo().isPresent()
                        && Quantity.exceeds(lbPerAcre, b.upTo().get().lbPerAcre()));
    return exceeded ? strictest(most, field, 0) : Optional.empty();
  }

  private static boolean above(PlantingBand other, PlantingBand band) {
    return other.upTo().isEmpty()
        || other.upTo().get().lbPerAcre() > band.upTo().orElseThrow().lbPerAcre();
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
