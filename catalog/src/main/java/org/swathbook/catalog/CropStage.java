package org.swathbook.catalog;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A growth stage and when it is reached: by °C-days from planting, or by days after emergence.
 * Exactly one is present.
 */
public record CropStage(String name, OptionalDouble degreeDays, OptionalInt daysAfterEmergence) {

  public CropStage {
    if (degreeDays.isPresent() == daysAfterEmergence.isPresent()) {
      throw new IllegalArgumentException(
          "a stage is reached by degree-days or by days, one of them");
    }
  }
}
