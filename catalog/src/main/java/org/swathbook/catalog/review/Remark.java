package org.swathbook.catalog.review;

import java.util.Comparator;
import org.swathbook.source.Mark;
import org.swathbook.source.Problem;

/** Something that a keeper should look at, with its place. */
public record Remark(Severity severity, Problem problem) implements Comparable<Remark> {

  /** How much it matters. */
  public enum Severity {
    /** The catalog contradicts itself; what it says cannot be right. */
    ERROR("error"),
    /** It may be right, and should be looked at. */
    ADVICE("advice");

    private final String word;

    Severity(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  private static final Comparator<Remark> ORDER =
      Comparator.comparing(Remark::severity).thenComparing(Remark::problem);

  static Remark error(Mark mark, String what, String right) {
    return new Remark(Severity.ERROR, new Problem(mark, what, right));
  }

  static Remark advice(Mark mark, String what, String right) {
    return new Remark(Severity.ADVICE, new Problem(mark, what, right));
  }

  @Override
  public int compareTo(Remark other) {
    return ORDER.compare(this, other);
  }
}
