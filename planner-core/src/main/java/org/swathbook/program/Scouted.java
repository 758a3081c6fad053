package org.swathbook.program;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.catalog.WeedId;

/**
 * Crop and weeds as seen on the day of a job.
 *
 * @param cropStage a stage of the field's crop as the catalog names it; empty to take the model's
 * @param cropHeightCm empty to take the model's
 * @param weedHeightCm height that nine plants in ten do not exceed; a weed that is not named is the
 *     model's
 */
public record Scouted(
    Optional<String> cropStage,
    OptionalDouble cropHeightCm,
    SortedMap<WeedId, Double> weedHeightCm) {

  public static final Scouted NOTHING =
      new Scouted(Optional.empty(), OptionalDouble.empty(), new TreeMap<>());

  public Scouted {
    weedHeightCm = Collections.unmodifiableSortedMap(new TreeMap<>(weedHeightCm));
    for (Map.Entry<WeedId, Double> e : weedHeightCm.entrySet()) {
      if (!(e.getValue() > 0)) {
        throw new IllegalArgumentException("the height of " + e.getKey() + " must be above zero");
      }
    }
  }
}
