package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.cli.report.ImportedPass;
import org.swathbook.cli.report.ReportHead;

/** What {@code record --import} wrote. */
public final class ImportText {
  private ImportText() {}

  public static String of(ReportHead head, List<ImportedPass> passes, List<String> addedColumns) {
    Page page = new Page();
    HeadText.on(page, "Import into the journal", head);
    int rows = passes.stream().mapToInt(p -> p.rows().size()).sum();
    page.line(
        "WRITTEN into applications.csv: "
            + Figures.counted(rows, "row", "rows")
            + " of "
            + Figures.counted(passes.size(), "pass", "passes"));
    Table table = new Table(2, "llll");
    for (ImportedPass p : passes) {
      table.row(
          p.id(),
          p.field().id().value(),
          Figures.date(p.date()),
          String.join(" + ", p.rows().stream().map(a -> a.dose().product().name()).toList()));
    }
    table.on(page);
    page.blank();
    if (!addedColumns.isEmpty()) {
      page.wrapped(
          0, 2, "Columns added at the right of applications.csv: " + Figures.list(addedColumns));
      page.blank();
    }
    federal(page, head, passes);
    HeadText.foot(page, false);
    return page.toString();
  }

  private static void federal(Page page, ReportHead head, List<ImportedPass> passes) {
    List<ImportedPass> lacking =
        passes.stream().filter(p -> !p.federal().missing().isEmpty()).toList();
    if (lacking.isEmpty()) {
      return;
    }
    page.line("The federal record of restricted use (7 CFR 110.3, from memory) still lacks:");
    for (ImportedPass p : lacking) {
      long left = p.federal().daysLeft(head.today());
      page.wrapped(
          2,
          4,
          p.id()
              + " ("
              + (left >= 0
                  ? Figures.counted((int) left, "day", "days") + " left"
                  : "due " + Figures.date(p.federal().due()))
              + "): "
              + Figures.list(p.federal().missing()));
    }
    page.blank();
  }
}
