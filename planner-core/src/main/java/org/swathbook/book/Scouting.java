package org.swathbook.book;

import java.time.LocalDate;
import java.util.Optional;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.FieldId;

/**
 * What somebody saw in a field, one zone of it a row.
 *
 * @param zone part of the field; empty when not named
 * @param weed empty for a row that tells of crop or irrigation only
 * @param cropStage a stage of the field's crop as the catalog names it
 * @param irrigationMm water put on that day, 0 for none
 */
public record Scouting(
    LocalDate date,
    FieldId field,
    String zone,
    Optional<WeedId> weed,
    Optional<ScoutedHeight> height,
    Optional<ScoutedCount> count,
    Optional<String> cropStage,
    double irrigationMm) {

  public Scouting {
    if (weed.isEmpty() && (height.isPresent() || count.isPresent())) {
      throw new IllegalArgumentException("a height or a count belongs to a weed");
    }
  }
}
