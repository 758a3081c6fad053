package org.swathbook.ledger;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Slug;

/** Where in a crop's season a journal row was made, from its column for the crop's stage. */
public final class Positions {
  private Positions() {}

  /**
   * A position as written ({@code pre}, {@code stubble}), or those that a stage of the crop may be
   * ({@code V6}: post or lay-by); empty for a text that is neither.
   */
  public static Set<Position> find(Catalog catalog, String crop, String written) {
    String slug = Slug.of(written);
    Optional<Position> position =
        Arrays.stream(Position.values()).filter(p -> p.spelling().equals(slug)).findFirst();
    return position
        .map(Set::of)
        .orElseGet(
            () -> catalog.findCrop(crop).map(c -> ofStage(c, written.strip())).orElse(Set.of()));
  }

  private static Set<Position> ofStage(Crop crop, String stage) {
    if (crop.findStage(stage).isEmpty()) {
      return Set.of();
    }
    boolean up =
        crop.findStage(stage).getAsInt() >= crop.findStage(crop.emergenceStage()).orElse(0);
    return up ? EnumSet.of(Position.POST, Position.LAY_BY) : Set.of(Position.PRE);
  }
}
