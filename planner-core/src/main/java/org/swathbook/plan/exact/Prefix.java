package org.swathbook.plan.exact;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Laid;
import org.swathbook.season.PreparedPass;

/**
 * The first passes of a program, by date.
 *
 * @param made what stands before them, whatever the program
 */
record Prefix(List<Laid> made, List<Candidate> passes) {

  Prefix {
    made = List.copyOf(made);
    passes = List.copyOf(passes);
  }

  Prefix then(Candidate next) {
    List<Candidate> out = new ArrayList<>(passes);
    out.add(next);
    return new Prefix(made, out);
  }

  /** How many passes are still to come. */
  int size() {
    return passes.size();
  }

  /** Date of the last pass on the grid; -1 for none. */
  int lastDate() {
    return passes.isEmpty() ? -1 : passes.get(passes.size() - 1).date();
  }

  /** Of the passes still to come. */
  double cost() {
    double sum = 0;
    for (Candidate c : passes) {
      sum += c.cost();
    }
    return sum;
  }

  /** All passes with what they lay, those made first. */
  List<Laid> laid() {
    List<Laid> out = new ArrayList<>(made);
    passes.forEach(c -> out.add(c.laid()));
    return out;
  }

  List<PreparedPass> prepared() {
    List<PreparedPass> out = new ArrayList<>();
    made.forEach(l -> out.add(l.pass()));
    passes.forEach(c -> out.add(c.pass()));
    return out;
  }

  Draft draft() {
    return new Draft(passes.stream().map(Candidate::stop).toList());
  }
}
