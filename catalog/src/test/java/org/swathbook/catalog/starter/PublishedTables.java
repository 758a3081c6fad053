package org.swathbook.catalog.starter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.swathbook.catalog.Method;
import org.swathbook.measure.Rate;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;

/** Reads the tables of published facts that lie beside this package. */
final class PublishedTables {

  private PublishedTables() {}

  /** Every published limit, in the order of the file. */
  static List<PublishedLimit> limits() {
    return rows(
            "published-limits.csv",
            "key",
            "ingredient",
            "form",
            "crop",
            "position",
            "kind",
            "of",
            "value",
            "formulation",
            "method",
            "rate",
            "ground",
            "states",
            "printed",
            "condition",
            "source")
        .stream()
        .map(PublishedTables::limit)
        .toList();
  }

  /** Reasons by the key of a limit. */
  static Map<String, String> reasons(String file) {
    Map<String, String> reasons = new LinkedHashMap<>();
    for (CsvRow row : rows(file, "key", "reason")) {
      if (row.text("reason").isEmpty()
          || reasons.put(row.text("key"), row.text("reason")) != null) {
        throw new IllegalStateException(row.mark() + ": twice, or without a reason");
      }
    }
    return reasons;
  }

  static List<CsvRow> rows(String file, String... columns) {
    Problems problems = new Problems();
    try (InputStream in = PublishedTables.class.getResourceAsStream(file)) {
      byte[] content = Objects.requireNonNull(in, file).readAllBytes();
      List<CsvRow> rows =
          new CsvReader().read(file, content, CsvColumns.required(columns), problems).rows();
      problems.throwIfAny();
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PublishedLimit limit(CsvRow row) {
    return new PublishedLimit(
        row.text("key"),
        split(row.text("ingredient"), "\\|").stream().map(i -> split(i, "\\+")).toList(),
        row.text("crop").equals("any") ? List.of() : split(row.text("crop"), "\\|"),
        row.text("position"),
        row.text("kind"),
        split(row.text("of"), "\\|"),
        row.text("value"),
        text(row, "formulation"),
        text(row, "method")
            .map(m -> m.toUpperCase(Locale.ROOT).replace('-', '_'))
            .map(Method::valueOf),
        text(row, "rate").map(PublishedTables::band),
        text(row, "ground")
            .map(g -> g.toUpperCase(Locale.ROOT).replace(' ', '_'))
            .map(PublishedLimit.Ground::valueOf),
        split(row.text("states"), "\\|"),
        row.text("source"));
  }

  private static PublishedLimit.RateBand band(String text) {
    boolean above = text.startsWith("above ");
    return new PublishedLimit.RateBand(
        Rate.parse(above ? text.substring("above ".length()) : text), above);
  }

  private static Optional<String> text(CsvRow row, String column) {
    return Optional.of(row.text(column)).filter(t -> !t.isEmpty());
  }

  static List<String> split(String text, String at) {
    return Arrays.stream(text.split(at)).map(String::strip).filter(t -> !t.isEmpty()).toList();
  }
}
