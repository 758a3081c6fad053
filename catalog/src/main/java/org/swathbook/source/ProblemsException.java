package org.swathbook.source;

import java.util.List;

/** Input that cannot be used, with every problem found in it. */
public final class ProblemsException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;
  private final List<String> report;

  public ProblemsException(Problems problems) {
    super(String.join("\n", problems.report()));
    this.problems = problems.sorted();
    this.report = problems.report();
  }

  public static ProblemsException of(Mark mark, String what, String right) {
    return of(new Problem(mark, what, right));
  }

  public static ProblemsException of(Problem problem) {
    Problems problems = new Problems();
    problems.add(problem);
    return new ProblemsException(problems);
  }

  /** Sorted by file, line and column. */
  public List<Problem> problems() {
    return problems;
  }

  /** What is shown: one line a problem, at most {@link Problems#SHOWN} and a count. */
  public List<String> report() {
    return report;
  }
}
