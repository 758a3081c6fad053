package org.swathbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/** Passes drawn, of which the earliest may be made already, and all programs of them. */
final class DrawnPrograms {
  final SmallBook small;
  final List<Stop> stops;
  final List<Stop> made = new ArrayList<>();
  final FieldEvaluator evaluator;
  final List<Draft> drafts = new ArrayList<>();

  DrawnPrograms(SmallBook small, List<Stop> drawn, Random random) {
    this.small = small;
    this.stops = new ArrayList<>(drawn);
    if (random.nextInt(3) == 0) {
      // The earliest pass drawn is made already, and what else stood on its day is past.
      Stop first = drawn.stream().min(Comparator.comparingInt(Stop::date)).orElseThrow();
      made.add(first);
      stops.removeIf(s -> s.date() <= first.date());
    }
    this.evaluator = small.evaluator(stops.isEmpty() ? drawn : stops, made);
    drafts.addAll(EveryProgram.of(stops, small.space().maxPasses()));
    if (!made.isEmpty()) {
      drafts.add(Draft.EMPTY);
    }
  }

  List<Walked> walked() {
    return drafts.stream().filter(evaluator::legal).map(evaluator::full).sorted(Goal.BEST).toList();
  }
}
