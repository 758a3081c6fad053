package org.swathbook.weather;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a station's record did not say, and what was done about it.
 *
 * @param temperatureFilled days of which a temperature was filled in, in order
 * @param rainUnknown days whose rain is not known and counts as none, in order
 * @param guessed days in a gap too long to be taken for observed
 * @param leftOut weather years that are no scenario for their gaps, with why
 */
public record Gaps(
    List<LocalDate> temperatureFilled,
    List<LocalDate> rainUnknown,
    SortedSet<LocalDate> guessed,
    SortedMap<Integer, String> leftOut) {

  /** Of a record in which nothing is missing. */
  public static final Gaps NONE = new Gaps(List.of(), List.of(), new TreeSet<>(), new TreeMap<>());

  public Gaps {
    temperatureFilled = List.copyOf(temperatureFilled);
    rainUnknown = List.copyOf(rainUnknown);
    guessed = Collections.unmodifiableSortedSet(new TreeSet<>(guessed));
    leftOut = Collections.unmodifiableSortedMap(new TreeMap<>(leftOut));
  }
}
