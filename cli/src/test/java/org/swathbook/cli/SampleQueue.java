package org.swathbook.cli;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.check.OpenHours;
import org.swathbook.check.QueuedPass;
import org.swathbook.cli.json.QueueJson;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.QueueReport;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.season.outcome.PassOutcome;

/** A queue with a pass that closes, hours of a forecast, and a field that is not looked at. */
final class SampleQueue {
  private SampleQueue() {}

  static String document(Book book, ReportHead head) {
    PassOutcome pass = Samples.outcome("Sample", 3).passes().get(1);
    QueuedPass queued =
        new QueuedPass(
            2,
            QueuedPass.State.CLOSES,
            LocalDate.of(2027, 6, 6),
            pass.mix(),
            "V3",
            pass.weeds(),
            Optional.of(LocalDate.of(2027, 6, 8)),
            Optional.empty(),
            SampleJudgement.of().findings(),
            List.of(),
            1.5);
    OpenHours hours =
        new OpenHours(
            List.of(
                new OpenHours.Span(
                    LocalDateTime.of(2027, 6, 6, 9, 0), LocalDateTime.of(2027, 6, 6, 11, 0))),
            List.of());
    return QueueJson.of(
        book,
        head,
        new QueueReport(
            List.of(
                new QueueReport.Row(
                    Samples.field(), "programs/sample.yaml", queued, Optional.of(hours))),
            List.of(new OrderReport.LeftOut(List.of("ND-2"), "no program in the book"))));
  }
}
