package org.swathbook.plan.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A program under construction: stops by date, none empty, no two on one date. */
public record Draft(List<Stop> stops) {

  public static final Draft EMPTY = new Draft(List.of());

  public Draft {
    List<Stop> sorted = new ArrayList<>(stops.size());
    for (Stop s : stops) {
      if (!s.options().isEmpty()) {
        sorted.add(s);
      }
    }
    sorted.sort(Comparator.comparingInt(Stop::date));
    stops = List.copyOf(sorted);
  }

  // Spelled out: searches look up drafts far more often than they make them.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Draft o && stops.equals(o.stops);
  }

  @Override
  public int hashCode() {
    return stops.hashCode();
  }

  public boolean hasDate(int date) {
    for (Stop s : stops) {
      if (s.date() == date) {
        return true;
      }
    }
    return false;
  }

  public Draft with(Stop stop) {
    List<Stop> all = new ArrayList<>(stops);
    all.add(stop);
    return new Draft(all);
  }

  public Draft replacing(int place, Stop stop) {
    List<Stop> all = new ArrayList<>(stops);
    all.set(place, stop);
    return new Draft(all);
  }

  public Draft without(int place) {
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
  public String key() {
    StringBuilder out = new StringBuilder();
    for (Stop s : stops) {
      out.append(s.date()).append(':').append(s.options()).append(';');
    }
    return out.toString();
  }
}
