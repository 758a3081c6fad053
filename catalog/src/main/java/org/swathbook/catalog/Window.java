package org.swathbook.catalog;

import java.util.Optional;

/**
 * From a point to a point, both inclusive unless {@code endExcluded}. An empty start or end is
 * open.
 *
 * @param endExcluded true for a label's 'before R1': the day R1 is reached is outside
 */
public record Window(Optional<TimePoint> from, Optional<TimePoint> to, boolean endExcluded) {

  @Override
  public String toString() {
    String start = from.map(p -> "from " + p).orElse("");
    String end = to.map(p -> (endExcluded ? "before " : "through ") + p).orElse("");
    return (start + " " + end).strip();
  }
}
