package org.swathbook.plan.draft;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.swathbook.measure.Money;

/** How programs of one field fare when rain or other work holds the sprayer up all season. */
public final class Delay {
  /** Every pass comes so many days late: default, ours. */
  public static final int DAYS = 7;

  /** Only as many of the best programs are asked about: default, ours. */
  private static final int ASKED = 30;

  private final PlanSpace space;
  private final Evaluator evaluator;
  private final Map<Draft, Money> known = new HashMap<>();

  public Delay(PlanSpace space, Evaluator evaluator) {
    this.space = space;
    this.evaluator = evaluator;
  }

  /**
   * Net return of an acre with every pass still to come a week late; a pass whose windows are over
   * by then is missed, and costs nothing.
   */
  public Money net(Walked w) {
    return known.computeIfAbsent(w.draft(), d -> evaluator.full(late(d)).net());
  }

  /**
   * Of the best programs, and of all asked about before, the one that nets most when it is late.
   */
  public Optional<Walked> leastHurt(List<Walked> sorted) {
    Set<Draft> before = Set.copyOf(known.keySet());
    return Stream.concat(
            sorted.stream().limit(ASKED),
            sorted.stream().skip(ASKED).filter(w -> before.contains(w.draft())))
        .max(Comparator.comparing(this::net).thenComparing(Walked::key, Comparator.reverseOrder()));
  }

  private Draft late(Draft draft) {
    return new Draft(draft.stops().stream().map(this::late).toList());
  }

  /** A pass so late, on the last day of the grid at the latest. */
  public Stop late(Stop stop) {
    return stop.on(Math.min(stop.date() + DAYS, space.grid().size() - 1));
  }
}
