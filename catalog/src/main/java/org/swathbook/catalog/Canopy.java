package org.swathbook.catalog;

import java.util.Collections;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * When the rows close: at a stage, or so many days after emergence by row spacing (cm), or never on
 * dry ground below a yield (bu/acre).
 */
public record Canopy(
    Optional<String> stage,
    SortedMap<Double, Integer> daysByRowCm,
    OptionalDouble neverBelowBuPerAcre,
    Source source) {

  public Canopy {
    daysByRowCm = Collections.unmodifiableSortedMap(new TreeMap<>(daysByRowCm));
  }
}
