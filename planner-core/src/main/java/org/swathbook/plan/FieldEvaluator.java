package org.swathbook.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.Book;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.SeasonOutcome;
import org.swathbook.season.SeasonWalk;

/**
 * Scores drafts of one field with the kernel that every other command walks too. Confined to one
 * thread.
 */
final class FieldEvaluator implements Evaluator {
  private final Book book;
  private final PlanSpace space;
  private final Legality legality;
  private final Kernel kernel;
  private final PlanWishes wishes;
  private final Map<Stop, PreparedPass> prepared = new HashMap<>();
  private final Map<Draft, Double> quick = new HashMap<>();
  private final Map<Draft, Boolean> legal = new HashMap<>();

  FieldEvaluator(Book book, TraceSet traces, PlanSpace space, Legality legality) {
    this(book, traces, space, legality, PlanWishes.NONE);
  }

  FieldEvaluator(
      Book book, TraceSet traces, PlanSpace space, Legality legality, PlanWishes wishes) {
    this.wishes = wishes;
    this.book = book;
    this.space = space;
    this.legality = legality;
    this.kernel = Kernel.of(book, traces);
  }

  /** Drafts scored so far. */
  int scored() {
    return quick.size();
  }

  @Override
  public double quick(Draft draft) {
    return quick.computeIfAbsent(draft, this::score);
  }

  private double score(Draft draft) {
    List<PreparedPass> passes = draft.stops().stream().map(this::prepare).toList();
    long[] cents = new long[passes.size()];
    for (int i = 0; i < cents.length; i++) {
      for (int o : draft.stops().get(i).options()) {
        cents[i] += space.option(o).cost().cents();
      }
    }
    return QuickScore.of(book, kernel, passes, cents)
        - Goal.PER_WISH * wishes.missing(space.actives(draft));
  }

  private PreparedPass prepare(Stop stop) {
    return prepared.computeIfAbsent(
        stop, s -> kernel.prepare(space.mix(s), space.grid().date(s.date())));
  }

  @Override
  public boolean legal(Draft draft) {
    return legal.computeIfAbsent(draft, d -> isAffordable(d) && legality.allows(d, space));
  }

  /** Every pass made, adjuvants aside, which have no price. */
  private boolean isAffordable(Draft draft) {
    if (wishes.budgetPerAcre().isEmpty()) {
      return true;
    }
    long cents = draft.stops().size() * book.passCost().cents();
    for (Stop stop : draft.stops()) {
      for (int o : stop.options()) {
        cents += space.option(o).cost().cents();
      }
    }
    return cents <= wishes.budgetPerAcre().get().cents();
  }

  @Override
  public Walked full(Draft draft) {
    SeasonOutcome outcome = SeasonWalk.walk(book, kernel, space.program(draft, "draft"));
    return new Walked(
        draft, outcome, HouseRuleCheck.broken(book, outcome), wishes.missing(space.actives(draft)));
  }
}
