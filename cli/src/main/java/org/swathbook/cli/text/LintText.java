package org.swathbook.cli.text;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.catalog.review.Remark;

/** The report of {@code catalog lint}. */
public final class LintText {
  private LintText() {}

  /** One paragraph a remark, errors first. */
  public static String of(LocalDate today, List<Remark> remarks) {
    Page page = new Page();
    long errors = remarks.stream().filter(r -> r.severity() == Remark.Severity.ERROR).count();
    int advice = remarks.size() - (int) errors;
    page.apart("Swathbook · review of the catalog", "today " + Figures.date(today));
    page.line(
        remarks.isEmpty()
            ? "Nothing found."
            : Figures.counted((int) errors, "error", "errors")
                + ", "
                + Figures.counted(advice, "piece of advice", "pieces of advice"));
    for (Remark r : remarks) {
      page.blank();
      page.line(r.severity().word() + "  " + r.problem().mark());
      page.wrapped(2, 4, r.problem().what() + "; " + r.problem().right());
    }
    return page.toString();
  }
}
