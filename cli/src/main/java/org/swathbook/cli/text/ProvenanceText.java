package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.review.Provenance;

/** The report of {@code catalog list --sources}. */
public final class ProvenanceText {
  private ProvenanceText() {}

  /** A table of kinds of value by kinds of source, with a total. */
  public static String of(List<Provenance.Row> rows) {
    Page page = new Page();
    page.line("Swathbook · catalog, what its values rest on");
    page.wrapped(
        0,
        "'published' names a label, paper or handbook. A value from memory may be wrong or out of"
            + " date: look it up before you rely on it.");
    page.blank();
    Table table = new Table(0, "llrrrrrr");
    List<String> head = new ArrayList<>(List.of("", ""));
    for (Source.Kind k : Source.Kind.values()) {
      head.add(heading(k));
    }
    table.row(head);
    for (Provenance.Row r : rows) {
      table.row(cells(r.group(), r.what(), k -> r.count(k)));
    }
    table.row(cells("all", "", k -> rows.stream().mapToInt(r -> r.count(k)).sum()));
    table.on(page);
    return page.toString();
  }

  /** One word, so that the columns stay narrow. */
  private static String heading(Source.Kind kind) {
    return switch (kind) {
      case PUBLISHED -> "published";
      case MEMORY -> "memory";
      case PRACTICE -> "practice";
      case DEFAULT -> "default";
      case INVENTED -> "invented";
      case NOT_GIVEN -> "no source";
    };
  }

  private static List<String> cells(String group, String what, ToIntFunction<Source.Kind> count) {
    List<String> out = new ArrayList<>(List.of(group, what));
    for (Source.Kind k : Source.Kind.values()) {
      int n = count.applyAsInt(k);
      out.add(n == 0 ? "-" : Integer.toString(n));
    }
    return out;
  }
}
