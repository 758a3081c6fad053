package org.swathbook.control;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.book.Field;
import org.swathbook.book.SoilRates;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.Weed;

/** How far an active reaches through the leaves of a weed at best. */
public final class FoliarReach {
  private FoliarReach() {}

  /**
   * Control, 0 to 1, of the smallest plants by the most that some uses allow on the field's soil:
   * what the table's figure for plants of the control height leaves out. Empty when not known.
   */
  public static OptionalDouble onSmallPlants(
      Catalog catalog,
      Field field,
      Ingredient active,
      List<Use> uses,
      Weed weed,
      Position.Phase phase) {
    double share = uses.stream().mapToDouble(u -> SoilRates.shareOfTop(u, field)).max().orElse(0);
    return Responses.foliar(catalog, active, weed, phase).stream()
        .mapToDouble(c -> c.control(share, 0))
        .findFirst();
  }

  /**
   * Control, 0 to 1, over the crop by a dose of plants of a height that resist nothing. Empty when
   * the catalog does not know.
   *
   * @param kgPerHa of the active
   * @param formulation of the product that brings it
   */
  public static OptionalDouble ofDose(
      Catalog catalog,
      Field field,
      Ingredient active,
      String formulation,
      double kgPerHa,
      Weed weed,
      double heightCm) {
    Position.Phase phase = Position.Phase.IN_CROP;
    OptionalDouble high =
        LabelRates.high(new TankActive(active, List.of(formulation), kgPerHa), field, phase);
    Optional<FoliarCurve> curve = Responses.foliar(catalog, active, weed, phase);
    return high.isEmpty() || curve.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(curve.get().control(kgPerHa / high.getAsDouble(), heightCm));
  }
}
