package org.swathbook.trials;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;

/**
 * An order of two rows that a trial found and that predictions should keep.
 *
 * @param points for {@link Relation#WITHIN} how many points they may lie apart
 * @param words what it says, with the trial
 * @param whyMissed what is known of it where the engine does not keep it; else empty
 */
record TrialOrdering(
    int better, Relation relation, int worse, double points, String words, String whyMissed) {
  private static final CsvColumns COLUMNS =
      CsvColumns.required("better", "relation", "worse", "points", "words", "whyMissed");

  /** How the first row stands to the second. */
  enum Relation {
    MORE,
    LEAST,
    WITHIN
  }

  static List<TrialOrdering> read(String name, byte[] content) {
    Problems problems = new Problems();
    List<TrialOrdering> out = new ArrayList<>();
    for (CsvRow row : new CsvReader().read(name, content, COLUMNS, problems).rows()) {
      out.add(
          new TrialOrdering(
              Integer.parseInt(row.text("better")),
              Relation.valueOf(row.text("relation").toUpperCase(java.util.Locale.ROOT)),
              Integer.parseInt(row.text("worse")),
              Double.parseDouble(row.text("points")),
              row.text("words"),
              row.text("whyMissed")));
    }
    problems.throwIfAny();
    return List.copyOf(out);
  }

  /**
   * Whether the predictions of its two rows keep it; a difference below a tenth of a point is none.
   */
  boolean isKept(double first, double second) {
    return switch (relation) {
      case MORE -> first > second + 0.1;
      case LEAST -> first >= second - 0.1;
      case WITHIN -> Math.abs(first - second) <= points;
    };
  }

  String relationWords() {
    return switch (relation) {
      case MORE -> better + " > " + worse;
      case LEAST -> better + " ≥ " + worse;
      case WITHIN -> better + " within " + Math.round(points) + " of " + worse;
    };
  }
}
