package org.swathbook.program;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * What was seen while walking a field after a pass.
 *
 * @param sprayed day of the pass that is judged
 * @param mix what was sprayed: what the journal has of that day, else a mix of the book
 * @param inJournal whether the journal has the pass
 * @param cropStage a stage of the field's crop as the catalog names it; empty when not written
 * @param weeds in the order of the file, each once
 */
public record Observation(
    FieldId field,
    LocalDate sprayed,
    Mix mix,
    boolean inJournal,
    LocalDate seen,
    Optional<String> cropStage,
    List<SeenWeed> weeds,
    PassConditions conditions) {

  public Observation {
    weeds = List.copyOf(weeds);
    if (seen.isBefore(sprayed)) {
      throw new IllegalArgumentException("a pass is looked at after it was made");
    }
  }

  /** Days between the pass and the look. */
  public int days() {
    return (int) ChronoUnit.DAYS.between(sprayed, seen);
  }
}
