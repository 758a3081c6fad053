package org.swathbook.plan;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.growth.TraceSet;

/**
 * The programs of one field, best first, or the reasons why there are none.
 *
 * @param without why each pass and product of the first program is there
 * @param front what more money buys, of all programs met, by cost
 */
public record FieldPlan(
    Field field,
    TraceSet traces,
    Optional<Refusal> refusal,
    List<PlannedProgram> programs,
    List<WithoutPart> without,
    List<FrontProgram> front,
    SearchNote search) {

  public FieldPlan {
    programs = List.copyOf(programs);
    without = List.copyOf(without);
    front = List.copyOf(front);
  }
}
