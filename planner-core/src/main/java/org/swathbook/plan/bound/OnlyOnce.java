package org.swathbook.plan.bound;

import java.util.List;
import org.swathbook.catalog.IngredientId;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.FieldEvaluator;

/** Whether labels, journal and what was asked let an active into a season but once. */
final class OnlyOnce {
  private OnlyOnce() {}

  /** Whether none of its doses may follow another. */
  static boolean is(AllDoses all, FieldEvaluator evaluator, IngredientId active) {
    List<Part> doses =
        all.days().stream()
            .flatMap(d -> d.parts().stream())
            .filter(p -> p.option().ingredient().equals(active))
            .toList();
    for (Part first : doses) {
      int from = all.firstAfter(first.day());
      for (Part then : doses) {
        if (then.day() >= from
            && evaluator.legal(new Draft(List.of(all.alone(first), all.alone(then))))) {
          return false;
        }
      }
    }
    return true;
  }
}
