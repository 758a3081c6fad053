package org.swathbook.cli.report;

import java.util.List;
import org.swathbook.book.Field;
import org.swathbook.plan.compare.ComparedProgram;
import org.swathbook.rules.Verdict;

/**
 * Programs of a field side by side.
 *
 * @param programs in the order in which they were named; the others are held against the first
 * @param notes what of the comparison could not be done, one sentence each
 */
public record ComparedField(Field field, List<ComparedProgram> programs, List<String> notes) {

  public ComparedField {
    programs = List.copyOf(programs);
    notes = List.copyOf(notes);
  }

  /** Whether nothing legal is among them. */
  public boolean isBlocked() {
    return programs.stream().allMatch(p -> p.judged().judgement().verdict() == Verdict.BLOCKED);
  }
}
