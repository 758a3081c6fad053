package org.swathbook.plan.climb;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Evaluator;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Stop;

/**
 * Drafts one step away from a draft: a dose more, less or another, a pass moved or dropped. Only
 * drafts that the use rules and the house limits on passes and products allow.
 */
public final class Moves {
  /**
   * Of all doses that a tank could take, only the best by quick score are tried in exchange for one
   * that it holds.
   */
  private static final int EXCHANGED = 10;

  private final PlanSpace space;
  private final Evaluator evaluator;

  public Moves(PlanSpace space, Evaluator evaluator) {
    this.space = space;
    this.evaluator = evaluator;
  }

  /** All neighbours, in a fixed order, without the draft itself. */
  List<Draft> of(Draft draft) {
    Set<Draft> out = new LinkedHashSet<>();
    for (int i = 0; i < draft.stops().size(); i++) {
      Stop stop = draft.stops().get(i);
      out.add(draft.without(i));
      List<Integer> worthwhile = worthwhile(draft, i, stop);
      for (int option : stop.options()) {
        Stop less = stop.without(option);
        out.add(draft.replacing(i, less));
        for (int other : worthwhile) {
          addIfTankAllows(out, draft, i, less, other);
        }
        for (int other : space.legalOn(stop.date())) {
          if (space.sameActive(option, other)) {
            addIfTankAllows(out, draft, i, less, other);
          }
        }
      }
      for (int option : space.legalOn(stop.date())) {
        addIfTankAllows(out, draft, i, stop, option);
      }
      for (int date : space.grid().near(stop.date())) {
        if (!draft.hasDate(date) && space.legal(date, stop.options())) {
          out.add(draft.replacing(i, stop.on(date)));
        }
      }
    }
    out.remove(draft);
    return new ArrayList<>(out);
  }

  /** Doses that would do most if the tank had room for one more, best first. */
  private List<Integer> worthwhile(Draft draft, int place, Stop stop) {
    record Added(int option, Draft draft) {}
    record Scored(int option, double score) {}
    List<Added> added =
        space.legalOn(stop.date()).stream()
            .filter(o -> stop.options().stream().noneMatch(held -> space.sameActive(held, o)))
            .map(o -> new Added(o, draft.replacing(place, stop.with(o))))
            .toList();
    evaluator.expect(added.stream().map(Added::draft).toList());
    return added.stream()
        .map(a -> new Scored(a.option(), evaluator.quick(a.draft())))
        .sorted(
            Comparator.comparingDouble(Scored::score).reversed().thenComparingInt(Scored::option))
        .limit(EXCHANGED)
        .map(Scored::option)
        .toList();
  }

  /** Neighbours that put one more dose of a choice into one pass: the mending moves. */
  List<Draft> adding(Draft draft, int place, List<Integer> choices) {
    Set<Draft> out = new LinkedHashSet<>();
    Stop stop = draft.stops().get(place);
    for (int option : choices) {
      addIfTankAllows(out, draft, place, stop, option);
      for (int gone : stop.options()) {
        addIfTankAllows(out, draft, place, stop.without(gone), option);
      }
    }
    return new ArrayList<>(out);
  }

  private void addIfTankAllows(Set<Draft> out, Draft draft, int place, Stop stop, int option) {
    if (space.takes(stop.date(), stop.options(), option)) {
      out.add(draft.replacing(place, stop.with(option)));
    }
  }
}
