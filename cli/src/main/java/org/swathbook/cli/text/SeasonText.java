package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.Judgement;
import org.swathbook.cli.report.HouseRuleWords;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.stress.StressResult;

/** The report of {@code season}. */
public final class SeasonText {
  private SeasonText() {}

  /**
   * @param stress what happens when the season goes wrong; empty when that was not asked
   */
  public static String of(
      Book book,
      ReportHead head,
      Field field,
      SeasonOutcome outcome,
      Judgement judgement,
      List<StressResult> stress) {
    Page page = new Page();
    HeadText.on(page, "Season of one program, year by year", head);
    FieldText.head(book, field, page);
    FieldText.weeds(book, field, page);
    page.apart("PROGRAM: " + outcome.program().name(), ProgramText.money(outcome));
    page.blank();
    new ProgramText(book, field).full(page, outcome, judgement);
    new YearText(book, field, outcome).on(page);
    new FindingText(book.catalog()).verdict(page, judgement);
    page.line("House rules: " + ProgramText.broken(judgement));
    judgement
        .brokenHouseRules()
        .forEach(
            b ->
                page.wrapped(
                    2, 4, b.name() + ", " + HouseRuleWords.of(book.catalog(), outcome, b)));
    page.blank();
    if (!stress.isEmpty()) {
      new StressText(outcome, judgement).on(page, stress);
    }
    HeadText.foot(page, true);
    return page.toString();
  }
}
