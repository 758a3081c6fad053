package org.swathbook.catalog;

import java.util.Optional;

/**
 * From a point to a point. An empty start or end is open; with both {@code to} and {@code before}
 * the first reached binds.
 *
 * @param from first day, inside
 * @param to last day, inside
 * @param before a label's 'before R1': the day R1 is reached is outside
 */
public record Window(Optional<TimePoint> from, Optional<TimePoint> to, Optional<TimePoint> before) {

  @Override
  public String toString() {
    String start = from.map(p -> "from " + p).orElse("");
    String end = to.map(p -> " through " + p).orElse("");
    String limit = before.map(p -> " before " + p).orElse("");
    return (start + end + limit).strip();
  }
}
