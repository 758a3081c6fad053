package org.swathbook.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;

/** Reads a table of trial results. */
final class TrialTable {
  private static final CsvColumns COLUMNS =
      CsvColumns.required(
              "row",
              "trial_id",
              "source",
              "region",
              "crop",
              "weed",
              "weed_biotype",
              "program_type",
              "treatment_actives_rates",
              "application_timing",
              "evaluated",
              "days",
              "control_low_pct",
              "control_high_pct")
          .andOptional(
              "url", "read_as", "years", "site_years", "qualifier", "other_result", "use_note");

  private TrialTable() {}

  /**
   * The rows in their order.
   *
   * @throws org.swathbook.source.ProblemsException with every mistake of form
   */
  static List<TrialRow> read(String name, byte[] content) {
    Problems problems = new Problems();
    List<TrialRow> out = new ArrayList<>();
    for (CsvRow row : new CsvReader().read(name, content, COLUMNS, problems).rows()) {
      out.add(row(row));
    }
    problems.throwIfAny();
    return List.copyOf(out);
  }

  private static TrialRow row(CsvRow row) {
    OptionalDouble low = percent(row.text("control_low_pct"));
    OptionalDouble high = percent(row.text("control_high_pct"));
    String qualifier = row.text("qualifier").strip();
    // A single figure marked "at least" or "at most" bounds one side only, wherever it stands.
    if (qualifier.startsWith(">")) {
      low = low.isPresent() ? low : high;
      high = OptionalDouble.empty();
    } else if (qualifier.startsWith("<")) {
      high = high.isPresent() ? high : low;
      low = OptionalDouble.empty();
    }
    return new TrialRow(
        Integer.parseInt(row.text("row").strip()),
        row.text("trial_id"),
        row.text("source"),
        row.text("region"),
        row.text("crop"),
        row.text("weed"),
        row.text("weed_biotype"),
        row.text("program_type"),
        row.text("treatment_actives_rates"),
        row.text("application_timing"),
        row.text("evaluated"),
        row.text("days"),
        low,
        high,
        qualifier,
        row.text("use_note"));
  }

  private static OptionalDouble percent(String text) {
    return text.isBlank()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Double.parseDouble(text.strip()));
  }
}
