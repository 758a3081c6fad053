package org.swathbook.catalog;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/** Least distance of spraying, in feet, from each kind of water: {@code well}, {@code lake}. */
public record Setbacks(SortedMap<String, Double> feet) {

  public Setbacks {
    feet = Collections.unmodifiableSortedMap(new TreeMap<>(feet));
  }
}
