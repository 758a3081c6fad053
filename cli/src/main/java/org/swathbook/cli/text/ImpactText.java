package org.swathbook.cli.text;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.check.CatalogImpact;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.rules.Finding;

/** The report of {@code catalog impact}. */
public final class ImpactText {
  private ImpactText() {}

  public static String of(Book book, ReportHead head, List<CatalogImpact.Hit> hits) {
    Page page = new Page();
    HeadText.on(page, "Impact of a changed catalog on " + book.name(), head);
    page.line(
        hits.isEmpty()
            ? "No saved program and no application of this season is judged otherwise."
            : Figures.counted(hits.size(), "rule says", "rules say")
                + " something else of a saved program or an application of this season:");
    for (CatalogImpact.Hit h : hits) {
      page.line(
          "  "
              + h.field().id()
              + " · "
              + h.program()
                  .map(p -> "program " + p)
                  .orElseGet(() -> "application " + h.application().orElseThrow())
              + " · "
              + h.rule()
              + ": "
              + word(h.before())
              + " -> "
              + word(h.after()));
      page.wrapped(6, h.after().or(h::before).map(Finding::message).orElseThrow());
    }
    page.blank();
    HeadText.foot(page, false);
    return page.toString();
  }

  private static String word(Optional<Finding> finding) {
    return finding.map(f -> f.severity().word()).orElse("silent");
  }
}
