package org.swathbook.control;

import java.util.OptionalDouble;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Weed;

/** How far an active reaches through the leaves of a weed at best. */
public final class FoliarReach {
  private FoliarReach() {}

  /**
   * Control, 0 to 1, of the smallest plants at the top of the label's range: what the table's
   * figure for plants of the control height leaves out. Empty when not known.
   */
  public static OptionalDouble onSmallPlants(
      Catalog catalog, Ingredient active, Weed weed, Position.Phase phase) {
    return Responses.foliar(catalog, active, weed, phase).stream()
        .mapToDouble(c -> c.control(1, 0))
        .findFirst();
  }
}
