package org.swathbook.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A pass of a program beside the pass of the journal that was made for it.
 *
 * @param planned first day fit for spraying at or after its time, in the weather of that season;
 *     empty for a pass that no program planned
 * @param made day in the journal; empty for a pass that was left out
 * @param application id of the pass in the journal
 * @param days from the planned day to the one it was made on, negative when it was earlier
 * @param leftOut actives that were planned and not sprayed
 * @param added actives that were sprayed and not planned
 * @param rates actives sprayed at another rate, with both, in words
 */
public record PassMatch(
    Optional<LocalDate> planned,
    Optional<LocalDate> made,
    Optional<String> application,
    Fate fate,
    int days,
    List<String> leftOut,
    List<String> added,
    List<String> rates) {

  /** What became of a pass. */
  public enum Fate {
    ON_TIME("on time"),
    LATE("late"),
    EARLY("early"),
    LEFT_OUT("left out"),
    ADDED("added");

    private final String word;

    Fate(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  public PassMatch {
    leftOut = List.copyOf(leftOut);
    added = List.copyOf(added);
    rates = List.copyOf(rates);
  }
}
