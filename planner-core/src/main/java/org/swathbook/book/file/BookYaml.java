package org.swathbook.book.file;

import java.util.Optional;
import org.swathbook.measure.Money;
import org.swathbook.source.MapNode;

/**
 * What {@code book.yaml} says.
 *
 * @param isReadable whether the file could be read at all
 * @param season empty when it cannot be read
 * @param crops prices by crop, not yet looked up in the catalog
 * @param houseRules thresholds, whose weeds are not yet looked up in the catalog
 */
record BookYaml(
    boolean isReadable,
    String name,
    Optional<Integer> season,
    boolean metric,
    boolean starter,
    String catalogFolder,
    Optional<MapNode> crops,
    Money passCost,
    Money resprayExtra,
    Optional<MapNode> houseRules) {

  /** Stands in for a file that cannot be read at all, so that the others can be judged. */
  static final BookYaml UNREADABLE =
      new BookYaml(
          false,
          "",
          Optional.empty(),
          false,
          true,
          "catalog",
          Optional.empty(),
          Money.ZERO,
          Money.ZERO,
          Optional.empty());
}
