package org.swathbook.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Drafts one step away from a draft: a dose more, less or another, a pass moved, added or dropped.
 * Only drafts that the use rules and the house limits on passes and products allow.
 */
final class Moves {
  private final PlanSpace space;

  Moves(PlanSpace space) {
    this.space = space;
  }

  /** All neighbours, in a fixed order, without the draft itself. */
  List<Draft> of(Draft draft) {
    Set<Draft> out = new LinkedHashSet<>();
    for (int i = 0; i < draft.stops().size(); i++) {
      Stop stop = draft.stops().get(i);
      out.add(draft.without(i));
      for (int option : stop.options()) {
        Stop less = stop.without(option);
        out.add(draft.replacing(i, less));
        for (int other : space.legalOn(stop.date())) {
          addIfTankAllows(out, draft, i, less, other);
        }
      }
      for (int option : space.legalOn(stop.date())) {
        addIfTankAllows(out, draft, i, stop, option);
      }
      for (int date = stop.date() - 4; date <= stop.date() + 4; date++) {
        if (date >= 0
            && date < space.grid().size()
            && !draft.hasDate(date)
            && space.legal(date, stop.options())) {
          out.add(draft.replacing(i, stop.on(date)));
        }
      }
    }
    if (draft.stops().size() < space.maxPasses()) {
      for (int date = 0; date < space.grid().size(); date += 2) {
        if (!draft.hasDate(date)) {
          for (int option : space.legalOn(date)) {
            out.add(draft.with(new Stop(date, List.of(option))));
          }
        }
      }
    }
    out.remove(draft);
    return new ArrayList<>(out);
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
    if (stop.options().size() < space.maxProducts()
        && stop.options().stream().noneMatch(o -> space.sameActive(o, option))) {
      out.add(draft.replacing(place, stop.with(option)));
    }
  }
}
