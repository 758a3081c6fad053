package org.swathbook.stress;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What one case does to a program.
 *
 * @param name stable id of the case
 * @param title in a few words
 * @param whyNot why it could not be put; all else is then empty
 * @param walks one for each variant
 * @param worst place among them of the one with the greatest yield loss; -1 when there is none
 * @param knownFrom first day on which something may still be changed against the worst
 * @param remedies the best single changes against the worst, best first; empty when nothing legal
 *     helps
 */
public record StressResult(
    String name,
    String title,
    Optional<String> whyNot,
    List<String> notes,
    List<StressedWalk> walks,
    int worst,
    Optional<LocalDate> knownFrom,
    List<Remedy> remedies) {

  public StressResult {
    notes = List.copyOf(notes);
    walks = List.copyOf(walks);
    remedies = List.copyOf(remedies);
  }

  /** The walk that counts; only of a case that was put. */
  public StressedWalk worstWalk() {
    return walks.get(worst);
  }
}
