package org.swathbook.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.swathbook.book.Field;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Money;
import org.swathbook.plan.FieldPlan;
import org.swathbook.plan.FrontProgram;
import org.swathbook.plan.LiftedLimit;
import org.swathbook.plan.PlannedProgram;
import org.swathbook.plan.Refusal;
import org.swathbook.plan.SearchNote;
import org.swathbook.plan.WhyNot;
import org.swathbook.plan.WithoutPart;
import org.swathbook.rules.Finding;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Severity;

/**
 * The plan of a field without the trace behind it, so that reports over hundreds of fields fit into
 * memory.
 *
 * @param limits limits of the plan without which a program would break fewer house rules, or there
 *     would be one
 * @param without why each pass and product of the first program is there
 * @param front what more money buys, by cost
 * @param millis time that planning took; empty when it is not to be told, since no two runs take
 *     the same
 */
public record PlannedField(
    Field field,
    Optional<Refusal> refusal,
    List<LiftedLimit> limits,
    List<PlannedProgram> programs,
    List<WithoutPart> without,
    List<FrontProgram> front,
    SearchNote search,
    List<WhyNot> whyNot,
    OptionalLong millis) {

  public PlannedField {
    limits = List.copyOf(limits);
    programs = List.copyOf(programs);
    without = List.copyOf(without);
    front = List.copyOf(front);
    whyNot = List.copyOf(whyNot);
  }

  public static PlannedField of(FieldPlan plan) {
    return of(plan, List.of(), List.of());
  }

  /** With limits that keep it from more, and answers on actives that it was asked about. */
  public static PlannedField of(FieldPlan plan, List<LiftedLimit> limits, List<WhyNot> whyNot) {
    return new PlannedField(
        plan.field(),
        plan.refusal(),
        limits,
        plan.programs(),
        plan.without(),
        plan.front(),
        plan.search(),
        whyNot,
        OptionalLong.empty());
  }

  public PlannedField timed(long took) {
    return new PlannedField(
        field, refusal, limits, programs, without, front, search, whyNot, OptionalLong.of(took));
  }

  /**
   * What the house rules cost on an acre: how much more the program of the highest net return nets
   * than the recommended one. Empty where none is recommended, or the rules cost nothing.
   */
  public Optional<Money> houseRulesCost() {
    if (isRefused() || !programs.get(0).recommended()) {
      return Optional.empty();
    }
    return programs.get(0).outcome().net().flatMap(this::mostOver);
  }

  /**
   * Rules that warn of the first program's whole season, each with the weeds that it names, in the
   * order of the findings: a program may break no house rule and yet let many plants live.
   */
  public Map<RuleId, List<WeedId>> warnings() {
    Map<RuleId, List<WeedId>> out = new LinkedHashMap<>();
    if (!isRefused()) {
      for (Finding f : programs.get(0).judgement().findings()) {
        if (f.severity() == Severity.WARN && f.about().pass().isEmpty()) {
          List<WeedId> weeds = out.computeIfAbsent(f.rule(), r -> new ArrayList<>());
          f.about().weed().filter(w -> !weeds.contains(w)).ifPresent(weeds::add);
        }
      }
    }
    return out;
  }

  private Optional<Money> mostOver(Money within) {
    return programs.stream()
        .flatMap(p -> p.outcome().net().stream())
        .max(Comparator.naturalOrder())
        .map(most -> most.minus(within))
        .filter(m -> m.compareTo(Money.ZERO) > 0);
  }

  /** Whether there is nothing legal to show. */
  public boolean isRefused() {
    return programs.isEmpty();
  }
}
