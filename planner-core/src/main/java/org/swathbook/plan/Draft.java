package org.swathbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A program under construction: stops by date, none empty, no two on one date. */
record Draft(List<Stop> stops) {

  static final Draft EMPTY = new Draft(List.of());

  Draft {
    stops =
        stops.stream()
            .filter(s -> !s.options().isEmpty())
            .sorted(Comparator.comparingInt(Stop::date))
            .toList();
  }

  boolean hasDate(int date) {
    return stops.stream().anyMatch(s -> s.date() == date);
  }

  Draft with(Stop stop) {
    List<Stop> all = new ArrayList<>(stops);
    all.add(stop);
    return new Draft(all);
  }

  Draft replacing(int place, Stop stop) {
    List<Stop> all = new ArrayList<>(stops);
    all.set(place, stop);
    return new Draft(all);
  }

  Draft without(int place) {
    List<Stop> all = new ArrayList<>(stops);
    all.remove(place);
    return new Draft(all);
  }

  int products() {
    return stops.stream().mapToInt(s -> s.options().size()).sum();
  }

  /** A fixed order among drafts, to break ties the same way on every machine. */
  String key() {
    StringBuilder out = new StringBuilder();
    for (Stop s : stops) {
      out.append(s.date()).append(':').append(s.options()).append(';');
    }
    return out.toString();
  }
}
