package org.swathbook.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.Book;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.Kernel;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.Score;
import org.swathbook.season.SeasonOutcome;
import org.swathbook.season.SeasonWalk;

/**
 * Scores drafts of one field with the kernel that every other command walks too. Confined to one
 * thread.
 */
final class FieldEvaluator implements Evaluator {
  /**
   * Dollars per point of control that a driver weed is short of the house level: steers the search,
   * default, ours.
   */
  private static final double PER_POINT_SHORT = 3;

  private final Book book;
  private final TraceSet traces;
  private final PlanSpace space;
  private final Legality legality;
  private final Kernel kernel;
  private final Map<Stop, PreparedPass> prepared = new HashMap<>();
  private final Map<Draft, Double> quick = new HashMap<>();
  private final Map<Draft, Boolean> legal = new HashMap<>();

  FieldEvaluator(Book book, TraceSet traces, PlanSpace space, Legality legality) {
    this.book = book;
    this.traces = traces;
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
    Score s = kernel.score(passes);
    double dollars = s.weedFreeDollarsPerAcre() - s.lossDollarsPerAcre();
    for (int i = 0; i < passes.size(); i++) {
      double met = 1 - passes.get(i).missedYears().size() / (double) s.years();
      long cents = book.passCost().cents();
      for (int o : draft.stops().get(i).options()) {
        cents += space.option(o).cost().cents();
      }
      dollars -= met * cents / 100;
    }
    for (int w = 0; w < traces.weeds().size(); w++) {
      if (traces.weeds().get(w).driver().isDriver()) {
        dollars -=
            PER_POINT_SHORT * Math.max(0, 100 * book.house().seasonControl() - s.controlPct(w));
      }
    }
    return dollars;
  }

  private PreparedPass prepare(Stop stop) {
    return prepared.computeIfAbsent(
        stop, s -> kernel.prepare(space.mix(s), space.grid().date(s.date())));
  }

  @Override
  public boolean legal(Draft draft) {
    return legal.computeIfAbsent(draft, d -> legality.allows(d, space));
  }

  @Override
  public Walked full(Draft draft) {
    SeasonOutcome outcome = SeasonWalk.walk(book, kernel, space.program(draft, "draft"));
    return new Walked(draft, outcome, HouseRuleCheck.broken(book, outcome));
  }
}
