package org.swathbook.trials;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;

/** The tables kept with the tests. */
final class Published {
  private Published() {}

  static byte[] read(String name) {
    try (InputStream in =
        Objects.requireNonNull(Published.class.getResourceAsStream("/published/" + name), name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<TrialRow> rows() {
    return TrialTable.read("trial_results.csv", read("trial_results.csv"));
  }

  static List<RegionalClimate> climates() {
    return RegionalClimate.read("regional_climate.csv", read("regional_climate.csv"));
  }

  static List<TrialOrdering> orderings() {
    return TrialOrdering.read("trial_orderings.csv", read("trial_orderings.csv"));
  }

  /** What is known of rows that are missed, by row. */
  static Map<Integer, String> why() {
    Problems problems = new Problems();
    Map<Integer, String> out = new TreeMap<>();
    CsvColumns columns = CsvColumns.required("row", "why");
    for (CsvRow row :
        new CsvReader()
            .read("trial_misses.csv", read("trial_misses.csv"), columns, problems)
            .rows()) {
      out.put(Integer.parseInt(row.text("row")), row.text("why"));
    }
    problems.throwIfAny();
    return out;
  }
}
