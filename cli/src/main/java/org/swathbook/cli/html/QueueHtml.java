package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.check.QueuedPass.State;
import org.swathbook.cli.report.QueueReport;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.text.QueueWords;

/** The page of {@code plan --queue}. */
public final class QueueHtml {
  private final QueueWords words;
  private final List<Block> blocks = new ArrayList<>();

  private QueueHtml(QueueWords words) {
    this.words = words;
  }

  public static String of(Book book, ReportHead head, QueueReport report) {
    QueueHtml html = new QueueHtml(new QueueWords(book, head.today()));
    for (State state : State.values()) {
      List<QueueReport.Row> rows =
          report.rows().stream().filter(r -> r.pass().state() == state).toList();
      if (!rows.isEmpty()) {
        html.blocks.add(new Block.Heading(QueueWords.heading(state)));
        if (state.compareTo(State.MISSED) < 0) {
          rows.forEach(html::looked);
        } else {
          html.resting(rows);
        }
      }
    }
    if (report.rows().isEmpty()) {
      html.line("", "No pass is looked at: no field has a program.");
    }
    if (!report.leftOut().isEmpty()) {
      html.blocks.add(new Block.Heading("Not looked at"));
      report
          .leftOut()
          .forEach(l -> html.line("fact", String.join(", ", l.fields()) + ": " + l.why()));
    }
    QueueWords.READING.forEach(l -> html.line("small", l));
    return Pages.fill(
        "blocks.jte", new BlockPage(SheetHead.of("The season today", head), html.blocks));
  }

  private void line(String css, String what) {
    blocks.add(new Block.Line(css, what));
  }

  private void looked(QueueReport.Row row) {
    line("lead", words.title(row) + ", " + words.when(row));
    line("", words.mix(row));
    words.why(row).forEach(l -> line("fact", l));
    line("", String.join("; ", words.stands(row)));
    words.warned(row).ifPresent(l -> line("", l));
    words.chances(row).forEach(l -> line("small", l));
  }

  private void resting(List<QueueReport.Row> rows) {
    blocks.add(
        Block.Grid.plain(
            List.of("field and pass", "when", "actives"),
            rows.stream().map(r -> List.of(words.title(r), words.when(r), words.mix(r))).toList()));
  }
}
