package org.swathbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.plan.choice.PlanWishes;

/**
 * A limit of a plan that keeps a program away, found by planning again without that limit alone.
 *
 * @param key the option as it is typed, {@code --budget}, or the key of the house rules, {@code
 *     maxPasses}
 * @param limit what it asks, and {@code met} what the program has, in words
 * @param best whether the program is the first one without that limit; else it is one that breaks
 *     no more house rules and goes less far beyond the limit
 */
public record LiftedLimit(
    String key, String limit, String met, boolean best, PlannedProgram program) {

  /**
   * The limits that keep a field from a plan: of one that has no program each that leads to one, of
   * one whose program breaks house rules each that leads to one that breaks fewer. None of a plan
   * that is recommended.
   *
   * @param effort spent on each that was asked; those of the house, which stand against any plan
   *     that is not recommended, get a quick look, and none where the field got no more and nothing
   *     was asked
   */
  public static List<LiftedLimit> of(
      Book book, PlanWishes wishes, FieldPlan plan, Effort effort, LocalDate today) {
    Optional<PlannedProgram> first = plan.programs().stream().findFirst();
    if (first.filter(PlannedProgram::recommended).isPresent()
        || plan.refusal().filter(r -> !r.isOfAsked() && first.isEmpty()).isPresent()) {
      return List.of();
    }
    List<LiftedLimit> out = new ArrayList<>();
    for (PlanLimit limit : PlanLimits.of(book, wishes)) {
      if (isLookedAt(limit, wishes, effort)
          && (first.isEmpty() || limit.binds().test(first.get().outcome()))) {
        FieldPlan without =
            without(limit, plan.field(), limit.isAsked() ? effort : Effort.QUICK, today);
        if (first.isEmpty()
            || without.programs().stream()
                .limit(1)
                .anyMatch(p -> broken(p) < broken(first.get()))) {
          out.addAll(nearestAndBest(limit, without));
        }
      }
    }
    return out;
  }

  private static boolean isLookedAt(PlanLimit limit, PlanWishes wishes, Effort effort) {
    return limit.isAsked() || effort != Effort.QUICK || !wishes.equals(PlanWishes.NONE);
  }

  private static int broken(PlannedProgram p) {
    return p.judgement().brokenNames().size();
  }

  static FieldPlan without(PlanLimit limit, Field field, Effort effort, LocalDate today) {
    return new Planner(limit.lifted().book(), limit.lifted().wishes(), effort).plan(field, today);
  }

  /** The first program of a plan without the limit; empty where it keeps to the limit anyway. */
  static Optional<LiftedLimit> best(PlanLimit limit, FieldPlan without) {
    return without.programs().stream().findFirst().flatMap(p -> of(limit, p, true));
  }

  /** The same, and before it the program that goes least far beyond the limit, where another. */
  static List<LiftedLimit> nearestAndBest(PlanLimit limit, FieldPlan without) {
    Optional<LiftedLimit> best = best(limit, without);
    if (best.isEmpty()) {
      return List.of();
    }
    PlannedProgram first = best.get().program();
    double most = limit.beyond().applyAsDouble(first.outcome());
    Optional<LiftedLimit> nearest =
        without.programs().stream()
            .filter(
                p -> broken(p) <= broken(first) && limit.beyond().applyAsDouble(p.outcome()) < most)
            .min(Comparator.comparingDouble(p -> limit.beyond().applyAsDouble(p.outcome())))
            .flatMap(p -> of(limit, p, false));
    return Stream.concat(nearest.stream(), best.stream()).toList();
  }

  private static Optional<LiftedLimit> of(PlanLimit limit, PlannedProgram p, boolean best) {
    return limit.beyond().applyAsDouble(p.outcome()) > 0
        ? Optional.of(
            new LiftedLimit(limit.key(), limit.limit(), limit.met().apply(p.outcome()), best, p))
        : Optional.empty();
  }
}
