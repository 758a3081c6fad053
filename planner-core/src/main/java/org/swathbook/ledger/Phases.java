package org.swathbook.ledger;

import java.util.Arrays;
import java.util.Optional;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Slug;

/** Where in a crop's life a journal row was made, from its column for the crop's stage. */
final class Phases {
  private Phases() {}

  /**
   * The phase of a position ({@code pre}, {@code stubble}) or of a stage of the crop ({@code V6});
   * empty for a text that is neither.
   */
  static Optional<Position.Phase> find(Catalog catalog, String crop, String written) {
    String slug = Slug.of(written);
    Optional<Position> position =
        Arrays.stream(Position.values()).filter(p -> p.spelling().equals(slug)).findFirst();
    if (position.isPresent()) {
      return position.map(Position::phase);
    }
    return catalog.findCrop(crop).flatMap(c -> ofStage(c, written.strip()));
  }

  private static Optional<Position.Phase> ofStage(Crop crop, String stage) {
    if (crop.findStage(stage).isEmpty()) {
      return Optional.empty();
    }
    boolean up =
        crop.findStage(stage).getAsInt() >= crop.findStage(crop.emergenceStage()).orElse(0);
    return Optional.of(up ? Position.Phase.IN_CROP : Position.Phase.BEFORE_EMERGENCE);
  }
}
