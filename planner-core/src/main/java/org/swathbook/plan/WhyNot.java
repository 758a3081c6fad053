package org.swathbook.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.swathbook.book.Book;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Product;
import org.swathbook.check.UseJudge;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Timings;
import org.swathbook.measure.Money;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.rules.UseFacts;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * Why a plan does not use an active.
 *
 * @param inFirst whether its first program does
 * @param with the best program found that uses it, with what that gives up against the first; empty
 *     when there is none, and when the first does
 * @param better whether that program breaks fewer house rules than the first, or as many and nets
 *     more: the search, which is heuristic, had missed it
 * @param blocks rules that refuse it, where no program with it was found
 * @param leftOut why none of its products could be chosen; empty when some could
 */
public record WhyNot(
    Ingredient active,
    boolean inFirst,
    Optional<PlannedProgram> with,
    String givesUp,
    boolean better,
    List<Finding> blocks,
    List<String> leftOut) {

  /** Before, at and after planting. */
  private static final int[] DAYS = {-14, 0, 30};

  public WhyNot {
    blocks = List.copyOf(blocks);
    leftOut = List.copyOf(leftOut);
  }

  /** Plans the field again with the active asked for. */
  public static WhyNot of(
      Book book, PlanWishes wishes, FieldPlan plan, Ingredient active, LocalDate today) {
    Optional<PlannedProgram> first = plan.programs().stream().findFirst();
    if (first.filter(p -> uses(p.outcome(), active)).isPresent()) {
      return new WhyNot(active, true, Optional.empty(), "", false, List.of(), List.of());
    }
    FieldPlan with =
        new Planner(book, wishes.including(active.id()), plan.search().effort())
            .plan(plan.field(), today);
    Optional<PlannedProgram> best = with.programs().stream().findFirst();
    String givesUp =
        first.isPresent() && best.isPresent() ? GivesUp.against(first.get(), best.get()) : "";
    List<Finding> blocks =
        best.isPresent() ? List.of() : blocks(book, plan, active, with.refusal());
    List<String> leftOut =
        with.search().leftOut().stream()
            .filter(
                l ->
                    book.catalog().singles(active.id()).stream()
                        .anyMatch(p -> l.startsWith(p.name() + ":")))
            .toList();
    boolean better = first.isPresent() && best.isPresent() && isBetter(best.get(), first.get());
    return new WhyNot(
        active, false, best, givesUp, better, blocks, best.isPresent() ? List.of() : leftOut);
  }

  /** By what the planner recommends by: house rules broken, then the net return. */
  static boolean isBetter(PlannedProgram with, PlannedProgram first) {
    int more = with.judgement().brokenNames().size() - first.judgement().brokenNames().size();
    Optional<Money> gain = with.outcome().net().flatMap(n -> first.outcome().net().map(n::minus));
    return more < 0 || more == 0 && gain.filter(g -> g.cents() > 0).isPresent();
  }

  /** What refuses its doses in the search; of an active that had none there, its first product. */
  private static List<Finding> blocks(
      Book book, FieldPlan plan, Ingredient active, Optional<Refusal> refusal) {
    List<Finding> searched = refusal.map(Refusal::because).orElse(List.of());
    Optional<Product> product = book.catalog().singles(active.id()).stream().findFirst();
    if (!searched.isEmpty() || product.isEmpty()) {
      return searched;
    }
    Dose dose =
        Doses.ofProduct(
            book.catalog(), product.get(), product.get().step().like(product.get().spoken()));
    Map<String, Finding> out = new TreeMap<>();
    for (int day : DAYS) {
      PassTiming timing = Timings.at(plan.traces(), plan.field().plantDate().plusDays(day));
      for (UseFacts facts : UseJudge.facts(book, plan.traces(), 0, timing, Mix.of(List.of(dose)))) {
        UseJudge.judge(facts).withoutPass().sorted().stream()
            .filter(f -> f.severity() == Severity.BLOCK)
            .forEach(f -> out.putIfAbsent(f.rule() + " " + f.message(), f));
      }
    }
    return List.copyOf(out.values());
  }

  private static boolean uses(SeasonOutcome outcome, Ingredient active) {
    return outcome.program().passes().stream()
        .flatMap(p -> p.mix().actives().stream())
        .anyMatch(a -> a.ingredient().id().equals(active.id()));
  }
}
