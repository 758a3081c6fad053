package org.swathbook.source;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.swathbook.measure.MeasureException;

/** Collects problems while reading goes on, so that one run shows them all. */
public final class Problems {

  /** How many problems a report lists before it only counts. */
  public static final int SHOWN = 20;

  private final List<Problem> found = new ArrayList<>();

  public void add(Problem problem) {
    found.add(problem);
  }

  public void add(Mark mark, String what, String right) {
    add(new Problem(mark, what, right));
  }

  public void add(Mark mark, MeasureException error, String example) {
    add(Problem.of(mark, error, example));
  }

  public void addAll(Iterable<Problem> problems) {
    problems.forEach(this::add);
  }

  public boolean isEmpty() {
    return found.isEmpty();
  }

  /** How many were added so far; a reader compares counts to learn whether its part went well. */
  public int count() {
    return found.size();
  }

  /** By file, line and column; each only once. */
  public List<Problem> sorted() {
    return List.copyOf(new TreeSet<>(found));
  }

  public List<String> report() {
    return report(SHOWN);
  }

  /** One line a problem, sorted, at most so many and then a count of the rest. */
  public List<String> report(int maxShown) {
    List<Problem> all = sorted();
    List<String> lines = new ArrayList<>();
    all.stream().limit(maxShown).map(Problem::toString).forEach(lines::add);
    if (all.size() > maxShown) {
      int more = all.size() - maxShown;
      lines.add("and " + more + " more " + (more == 1 ? "problem" : "problems"));
    }
    return List.copyOf(lines);
  }

  /**
   * Ends the reading when anything was found.
   *
   * @throws ProblemsException with all that was found
   */
  public void throwIfAny() {
    if (!isEmpty()) {
      throw new ProblemsException(this);
    }
  }
}
