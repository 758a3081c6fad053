package org.swathbook.plan;

import java.util.Collections;
import java.util.List;
import java.util.TreeSet;

/** One pass of a draft: the place of its date on the grid and the options in the tank, rising. */
record Stop(int date, List<Integer> options) {

  Stop {
    options = List.copyOf(new TreeSet<>(options));
  }

  Stop with(int option) {
    TreeSet<Integer> all = new TreeSet<>(options);
    all.add(option);
    return new Stop(date, List.copyOf(all));
  }

  Stop without(int option) {
    TreeSet<Integer> all = new TreeSet<>(options);
    all.remove(option);
    return new Stop(date, List.copyOf(all));
  }

  Stop on(int otherDate) {
    return new Stop(otherDate, options);
  }

  boolean holds(int option) {
    return Collections.binarySearch(options, option) >= 0;
  }
}
