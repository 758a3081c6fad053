package org.swathbook.plan;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.season.PreparedPass;

/** The first passes of a program, by date. */
record Prefix(List<Candidate> passes) {

  static final Prefix EMPTY = new Prefix(List.of());

  Prefix {
    passes = List.copyOf(passes);
  }

  Prefix then(Candidate next) {
    List<Candidate> out = new ArrayList<>(passes);
    out.add(next);
    return new Prefix(out);
  }

  int size() {
    return passes.size();
  }

  /** Date of the last pass on the grid; -1 for none. */
  int lastDate() {
    return passes.isEmpty() ? -1 : passes.get(passes.size() - 1).date();
  }

  double cost() {
    double sum = 0;
    for (Candidate c : passes) {
      sum += c.cost();
    }
    return sum;
  }

  List<PreparedPass> prepared() {
    return passes.stream().map(Candidate::pass).toList();
  }

  Draft draft() {
    return new Draft(passes.stream().map(Candidate::stop).toList());
  }
}
