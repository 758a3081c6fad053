package org.swathbook.season;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * Passes of one planned date, of which a program has one. What is made may lie on the day of a pass
 * to come, and comes first then.
 */
record PassRow(LocalDate planned, boolean made) implements Comparable<PassRow> {
  private static final Comparator<PassRow> ORDER =
      Comparator.comparing(PassRow::planned).thenComparing(r -> !r.made);

  /** Those of some passes, in the order in which programs have them. */
  static List<PassRow> of(Collection<PreparedPass> passes) {
    return List.copyOf(new TreeSet<>(passes.stream().map(PassRow::of).toList()));
  }

  private static PassRow of(PreparedPass pass) {
    return new PassRow(pass.planned(), pass.isMade());
  }

  /** Place of a pass's row among them. */
  static int place(List<PassRow> rows, PreparedPass pass) {
    return Collections.binarySearch(rows, of(pass));
  }

  boolean holds(PreparedPass pass) {
    return equals(of(pass));
  }

  @Override
  public int compareTo(PassRow other) {
    return ORDER.compare(this, other);
  }
}
