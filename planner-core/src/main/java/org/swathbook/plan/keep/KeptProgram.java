package org.swathbook.plan.keep;

import java.util.List;
import org.swathbook.plan.change.SingleChange;
import org.swathbook.plan.compare.AgainstFirst;
import org.swathbook.plan.compare.ComparedProgram;

/**
 * A written program after some changes.
 *
 * @param name what it is, in words
 * @param changes in the order in which they were found; each has the program after it
 * @param newlyBroken names of house rules that it breaks and that the written program does not
 * @param against what it gives up and gains against the written program
 */
public record KeptProgram(
    String name,
    List<SingleChange> changes,
    ComparedProgram.Judged judged,
    List<String> newlyBroken,
    AgainstFirst against) {

  public KeptProgram {
    changes = List.copyOf(changes);
    newlyBroken = List.copyOf(newlyBroken);
  }

  /** How many things it asks to be changed. */
  public int size() {
    return changes.stream().mapToInt(SingleChange::size).sum();
  }

  /** Whether it breaks no house rule. */
  public boolean meetsHouseRules() {
    return judged.judgement().brokenHouseRules().isEmpty();
  }
}
