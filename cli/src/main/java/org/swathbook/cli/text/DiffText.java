package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.catalog.review.Change;

/** The report of {@code catalog diff}. */
public final class DiffText {
  private DiffText() {}

  /** Changes in words under the entry that they belong to. */
  public static String of(String before, String after, List<Change> changes) {
    Page page = new Page();
    page.line("Swathbook · catalog, from " + before + " to " + after);
    page.line(
        changes.isEmpty()
            ? "Nothing changed."
            : Figures.counted(changes.size(), "change", "changes"));
    String last = "";
    for (Change c : changes) {
      String entry = c.kind() + " " + c.entry();
      if (!entry.equals(last)) {
        page.blank();
        page.line(entry);
        last = entry;
      }
      page.wrapped(2, 4, c.words());
    }
    return page.toString();
  }
}
