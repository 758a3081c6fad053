package org.swathbook.cli.html;

import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.Judgement;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.season.outcome.SeasonOutcome;

/** The page of {@code season}. */
public final class SeasonHtml {
  private SeasonHtml() {}

  public static String of(
      Book book,
      ReportHead head,
      Field field,
      SeasonOutcome outcome,
      Judgement judgement,
      SeasonCalendar calendar) {
    return Pages.fill(
        "season.jte",
        new SeasonPage(
            SheetHead.of("Season of '" + outcome.program().name() + "', " + field.id(), head),
            ProgramWords.fieldLine(book, field),
            ProgramWords.facts(book, field),
            ProgramWords.weedsOf(book, field),
            ProgramWords.weedNotes(book, field),
            ProgramPart.of(
                book,
                field,
                outcome,
                judgement,
                Optional.of(calendar),
                "/summary",
                "",
                "/years",
                "/calendar")));
  }
}
