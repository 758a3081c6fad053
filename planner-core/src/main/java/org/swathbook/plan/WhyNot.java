package org.swathbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.catalog.Ingredient;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.OptionMaker;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.rules.Finding;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * Why a plan does not use an active.
 *
 * @param inFirst whether its first program does
 * @param with the best program found that uses it, with what that gives up against the first; empty
 *     when there is none, and when the first does
 * @param missed whether that program breaks fewer house rules than the first, or as many and nets
 *     more: the search, which is heuristic, had missed it
 * @param limits limits of the plan that keep it away: without one of them alone the first program
 *     would use it, or there would be one that does where there is none
 * @param blocks rules that refuse it, where no program with it was found
 * @param leftOut why none of its products could be chosen; empty when some could
 */
public record WhyNot(
    Ingredient active,
    boolean inFirst,
    Optional<PlannedProgram> with,
    String givesUp,
    boolean missed,
    List<LiftedLimit> limits,
    List<Finding> blocks,
    List<String> leftOut) {

  public WhyNot {
    limits = List.copyOf(limits);
    blocks = List.copyOf(blocks);
    leftOut = List.copyOf(leftOut);
  }

  /** Answers on one plan: what is planned anew for one active serves the next. */
  public static final class Asker {
    private final Book book;
    private final PlanWishes wishes;
    private final FieldPlan plan;
    private final Effort effort;
    private final LocalDate today;

    /** First programs without a limit, by its key. */
    private final Map<String, Optional<LiftedLimit>> lifted = new HashMap<>();

    /**
     * @param plan the plan that was made of {@code book} and {@code wishes}
     */
    public Asker(Book book, PlanWishes wishes, FieldPlan plan, Effort effort, LocalDate today) {
      this.book = book;
      this.wishes = wishes;
      this.plan = plan;
      this.effort = effort;
      this.today = today;
    }

    /** Plans the field again with the active asked for. */
    public WhyNot whyNot(Ingredient active) {
      Optional<PlannedProgram> first = plan.programs().stream().findFirst();
      if (first.filter(p -> uses(p.outcome(), active)).isPresent()) {
        return new WhyNot(
            active, true, Optional.empty(), "", false, List.of(), List.of(), List.of());
      }
      PlanWishes asked = wishes.including(active.id());
      FieldPlan with = new Planner(book, asked, effort).plan(plan.field(), today);
      Optional<PlannedProgram> best = with.programs().stream().findFirst();
      if (best.isEmpty()) {
        return new WhyNot(
            active,
            false,
            best,
            "",
            false,
            with.refusal().filter(Refusal::isOfAsked).isPresent()
                ? towards(active, asked)
                : List.of(),
            blocks(active, with.refusal()),
            leftOut(active, with));
      }
      return new WhyNot(
          active,
          false,
          best,
          first.map(f -> GivesUp.against(f, best.get())).orElse(""),
          first.filter(f -> isBetter(best.get(), f)).isPresent(),
          inTheWay(active, Stream.concat(first.stream(), best.stream()).toList()),
          List.of(),
          List.of());
    }

    /** Limits without which there would be a program with the active. */
    private List<LiftedLimit> towards(Ingredient active, PlanWishes asked) {
      List<LiftedLimit> out = new ArrayList<>();
      for (PlanLimit limit : PlanLimits.of(book, asked)) {
        LiftedLimit.nearestAndBest(limit, LiftedLimit.without(limit, plan.field(), effort, today))
            .stream()
            .filter(l -> uses(l.program().outcome(), active))
            .forEach(out::add);
      }
      return out;
    }

    /**
     * Limits without which the first program would use the active, of those that one of these
     * programs has reached.
     */
    private List<LiftedLimit> inTheWay(Ingredient active, List<PlannedProgram> reached) {
      List<LiftedLimit> out = new ArrayList<>();
      for (PlanLimit limit : PlanLimits.of(book, wishes)) {
        if (reached.stream().anyMatch(p -> limit.binds().test(p.outcome()))) {
          lifted
              .computeIfAbsent(
                  limit.key(),
                  k ->
                      LiftedLimit.best(
                          limit, LiftedLimit.without(limit, plan.field(), effort, today)))
              .stream()
              .filter(l -> uses(l.program().outcome(), active))
              .forEach(out::add);
        }
      }
      return out;
    }

    private static List<Finding> blocks(Ingredient active, Optional<Refusal> refusal) {
      return refusal.map(Refusal::because).orElse(List.of()).stream()
          .filter(f -> f.about().ingredient().stream().allMatch(active.id()::equals))
          .toList();
    }

    private List<String> leftOut(Ingredient active, FieldPlan with) {
      return with.search().leftOut().stream()
          .filter(
              l ->
                  book.catalog().singles(active.id()).stream()
                      .anyMatch(p -> OptionMaker.Made.isOn(l, p)))
          .toList();
    }
  }

  /** By what the planner recommends by: house rules broken, then the net return. */
  static boolean isBetter(PlannedProgram with, PlannedProgram first) {
    int more = with.judgement().brokenNames().size() - first.judgement().brokenNames().size();
    Optional<Money> gain = with.outcome().net().flatMap(n -> first.outcome().net().map(n::minus));
    return more < 0 || more == 0 && gain.filter(g -> g.cents() > 0).isPresent();
  }

  private static boolean uses(SeasonOutcome outcome, Ingredient active) {
    return outcome.program().passes().stream()
        .flatMap(p -> p.mix().actives().stream())
        .anyMatch(a -> a.ingredient().id().equals(active.id()));
  }
}
