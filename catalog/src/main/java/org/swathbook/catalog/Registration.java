package org.swathbook.catalog;

import java.time.MonthDay;
import java.util.List;
import java.util.Set;

/**
 * Where and when a use is registered.
 *
 * @param years label years that alone are covered
 * @param cutoffs last dates in a year, first match wins
 */
public record Registration(
    StateLimit states, Stated<LabelYears> years, Stated<List<Cutoff>> cutoffs) {

  /** First and last year, both inside. */
  public record LabelYears(int first, int last) {}

  /** Last allowed date; for these states, or for all when none is named. */
  public record Cutoff(Set<String> states, MonthDay last) {

    public Cutoff {
      states = Ordered.set(states);
    }
  }
}
