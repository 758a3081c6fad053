package org.swathbook.plan;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.growth.TraceSet;

/** The programs of one field, best first, or the reasons why there are none. */
public record FieldPlan(
    Field field,
    TraceSet traces,
    Optional<Refusal> refusal,
    List<PlannedProgram> programs,
    SearchNote search) {

  public FieldPlan {
    programs = List.copyOf(programs);
  }
}
