package org.swathbook.cli.work;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.book.file.WrittenProgram;
import org.swathbook.check.AddedSite;
import org.swathbook.check.Judgement;
import org.swathbook.check.ProgramJudge;
import org.swathbook.check.SeasonSoFar;
import org.swathbook.cli.report.JournalNotes;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.Kernel;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * A written program as it stands today, behind what the journal has of its season, walked and
 * judged.
 */
public record WalkedProgram(
    Field field, TraceSet traces, SeasonOutcome outcome, Judgement judgement, ReportHead head) {

  /**
   * @param name a file, else a name in the book's folder of programs
   * @throws org.swathbook.source.ProblemsException with what is wrong in the file, and with every
   *     pass whose time does not come
   */
  public static WalkedProgram of(Book book, BookPaths paths, String name, LocalDate today) {
    WrittenProgram written =
        ProgramReader.readWritten(paths.find(BookPaths.Kind.PROGRAM, name), paths, book);
    Field field = book.findField(written.program().field().value()).orElseThrow();
    TraceSet traces = TraceBuilder.build(book, field, today);
    PassTimes.check(written, traces, book.house().sizePercentile());
    SeasonSoFar soFar = SeasonSoFar.of(book, field, today);
    SeasonSoFar.Standing standing = soFar.standing(book, traces, written.program(), today);
    Kernel kernel = Kernel.of(book, traces);
    SeasonOutcome outcome = SeasonWalk.walk(book, kernel, standing.program());
    Judgement judgement =
        AddedSite.named(
            book,
            kernel,
            standing.program(),
            outcome,
            ProgramJudge.judge(book, traces, outcome, today),
            today);
    ReportHead head =
        ReportHead.of(book, List.of(field), today)
            .noted(JournalNotes.of(field, soFar))
            .noted(standing.notes());
    return new WalkedProgram(field, traces, outcome, judgement, head);
  }
}
