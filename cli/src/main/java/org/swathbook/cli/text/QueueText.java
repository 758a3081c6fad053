package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.check.QueuedPass.State;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.QueueReport;
import org.swathbook.cli.report.ReportHead;

/** The report of {@code plan --queue}. */
public final class QueueText {
  private QueueText() {}

  public static String of(Book book, ReportHead head, QueueReport report) {
    QueueWords words = new QueueWords(book, head.today());
    Page page = new Page();
    HeadText.on(page, "The season today", head);
    for (State state : State.values()) {
      List<QueueReport.Row> rows =
          report.rows().stream().filter(r -> r.pass().state() == state).toList();
      if (!rows.isEmpty()) {
        page.line(QueueWords.heading(state));
        rows.forEach(r -> row(page, words, r));
        page.blank();
      }
    }
    if (report.rows().isEmpty()) {
      page.line("No pass is looked at: no field has a program.");
      page.blank();
    }
    leftOut(page, report.leftOut());
    QueueWords.READING.forEach(l -> page.wrapped(0, 2, l));
    page.blank();
    HeadText.foot(page, false);
    return page.toString();
  }

  private static void row(Page page, QueueWords words, QueueReport.Row row) {
    page.apart("  " + words.title(row), words.when(row));
    page.wrapped(6, 8, words.mix(row));
    words.why(row).forEach(l -> page.wrapped(6, 8, l));
    List<String> stands = words.stands(row);
    if (!stands.isEmpty()) {
      page.wrapped(6, 8, String.join("; ", stands));
    }
    words.warned(row).ifPresent(l -> page.wrapped(6, 8, l));
    words.chances(row).forEach(l -> page.wrapped(6, 8, l));
  }

  private static void leftOut(Page page, List<OrderReport.LeftOut> leftOut) {
    if (leftOut.isEmpty()) {
      return;
    }
    page.line("Not looked at");
    leftOut.forEach(l -> page.wrapped(2, 4, String.join(", ", l.fields()) + ": " + l.why()));
    page.blank();
  }
}
