package org.swathbook.plan.draft;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** One pass of a draft: the place of its date on the grid and the options in the tank, rising. */
public record Stop(int date, List<Integer> options) {

  public Stop {
    options = rising(options) ? List.copyOf(options) : List.copyOf(new TreeSet<>(options));
  }

  private static boolean rising(List<Integer> options) {
    for (int i = 1; i < options.size(); i++) {
      if (options.get(i) <= options.get(i - 1)) {
        return false;
      }
    }
    return true;
  }

  public Stop with(int option) {
    List<Integer> all = new ArrayList<>(options.size() + 1);
    int i = 0;
    while (i < options.size() && options.get(i) < option) {
      all.add(options.get(i++));
    }
    all.add(option);
    if (i < options.size() && options.get(i) == option) {
      i++;
    }
    all.addAll(options.subList(i, options.size()));
    return new Stop(date, all);
  }

  public Stop without(int option) {
    List<Integer> all = new ArrayList<>(options.size());
    for (int o : options) {
      if (o != option) {
        all.add(o);
      }
    }
    return new Stop(date, all);
  }

  public Stop on(int otherDate) {
    return new Stop(otherDate, options);
  }

  // Spelled out: searches look up passes and drafts far more often than they make them.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Stop o && date == o.date && options.equals(o.options);
  }

  @Override
  public int hashCode() {
    return 31 * date + options.hashCode();
  }

  boolean holds(int option) {
    return Collections.binarySearch(options, option) >= 0;
  }
}
