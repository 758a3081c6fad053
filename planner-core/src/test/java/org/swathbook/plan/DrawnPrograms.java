package org.swathbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.Stop;
import org.swathbook.plan.draft.Walked;

/** Passes drawn, of which the earliest may be made already, and all programs of them. */
public final class DrawnPrograms {
  public final SmallBook small;
  public final List<Stop> stops;
  public final List<Stop> made = new ArrayList<>();
  public final FieldEvaluator evaluator;
  public final List<Draft> drafts = new ArrayList<>();

  public DrawnPrograms(SmallBook small, List<Stop> drawn, Random random) {
    this.small = small;
    this.stops = new ArrayList<>(drawn);
    if (random.nextInt(3) == 0) {
      // The earliest pass drawn is made already. What else stood on its day is past, unless the
      // house lets one pass follow another at once.
      Stop first = drawn.stream().min(Comparator.comparingInt(Stop::date)).orElseThrow();
      boolean atOnce = small.book.house().minDaysBetweenPasses() == 0;
      made.add(first);
      stops.removeIf(s -> s.equals(first) || s.date() == first.date() && !atOnce);
    }
    this.evaluator = small.evaluator(stops.isEmpty() ? drawn : stops, made);
    drafts.addAll(EveryProgram.of(stops, small.space().maxPasses()));
    if (!made.isEmpty()) {
      drafts.add(Draft.EMPTY);
    }
  }

  public List<Walked> walked() {
    return drafts.stream().filter(evaluator::legal).map(evaluator::full).sorted(Goal.BEST).toList();
  }
}
