package org.swathbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.draft.Goal;
import org.swathbook.plan.draft.Walked;

/**
 * For each house rule: the best program that breaks it alone, and so what loosening it would buy.
 */
final class Relaxations {
  private Relaxations() {}

  static List<Relaxation> of(List<Walked> walked) {
    TreeSet<String> rules = new TreeSet<>();
    walked.forEach(w -> rules.addAll(w.brokenNames()));
    List<Relaxation> out = new ArrayList<>();
    for (String rule : rules) {
      Optional<Walked> best =
          walked.stream()
              .filter(w -> w.outcome().net().isPresent())
              .filter(w -> w.brokenRules() == 1 && w.brokenNames().get(0).equals(rule))
              .min(Goal.BEST);
      best.ifPresent(w -> out.add(relaxation(rule, w)));
    }
    out.sort(
        Comparator.comparing(Relaxation::netPerAcre).reversed().thenComparing(Relaxation::rule));
    return out;
  }

  private static Relaxation relaxation(String rule, Walked w) {
    BrokenHouseRule worst = worst(w.broken());
    return new Relaxation(
        rule,
        Numbers.decimals(worst.limit(), 1),
        Double.isNaN(worst.actual()) ? "none" : Numbers.decimals(worst.actual(), 1),
        w.net(),
        w.outcome().controlPct());
  }

  private static BrokenHouseRule worst(List<BrokenHouseRule> broken) {
    return broken.stream()
        .max(Comparator.comparingDouble(b -> Math.abs(b.limit() - b.actual())))
        .orElseThrow();
  }
}
