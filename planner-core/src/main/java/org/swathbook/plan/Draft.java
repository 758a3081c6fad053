package org.swathbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A program under construction: stops by date, none empty, no two on one date. */
record Draft(List<Stop> stops) {

  static final Draft EMPTY = new Draft(List.of());

  Draft {
    List<Stop> sorted = new ArrayList<>(stops.size());
    for (Stop s : stops) {
      if (!s.options().isEmpty()) {
        sorted.add(s);
      }
    }
    sorted.sort(Comparator.comparingInt(Stop::date));
    stops = List.copyOf(sorted);
  }

  boolean hasDate(int date) {
    for (Stop s : stops) {
      if (s.date() == date) {
        return true;
      }
    }
    return false;
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
    int sum = 0;
    for (Stop s : stops) {
      sum += s.options().size();
    }
    return sum;
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
