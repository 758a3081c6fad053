package org.swathbook.plan.keep;

import java.util.List;
import java.util.Optional;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.plan.Refusal;

/**
 * A written program and the fewest changes after which it serves.
 *
 * @param written as it stands today: passes that are made, and what is still to come
 * @param notes what became of its passes, one sentence each
 * @param wanting what it lacks of what is asked, one sentence each
 * @param programs it with changes, fewest first: what serves again, then what meets the house rules
 *     too; empty when nothing was found that is legal and has all that is asked
 * @param anew the best program of a new plan, to show what keeping costs; empty when there is none
 * @param noPlan why there is none, where there is none
 * @param tried changed programs that were scored
 */
public record Kept(
    KeptProgram written,
    List<String> notes,
    List<String> wanting,
    List<KeptProgram> programs,
    Optional<PlannedProgram> anew,
    Optional<Refusal> noPlan,
    int tried) {

  public Kept {
    notes = List.copyOf(notes);
    wanting = List.copyOf(wanting);
    programs = List.copyOf(programs);
  }

  /** Whether the written program serves as it is. */
  public boolean needsNothing() {
    return !programs.isEmpty() && programs.get(0).changes().isEmpty();
  }
}
