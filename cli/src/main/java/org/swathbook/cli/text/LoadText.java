package org.swathbook.cli.text;

import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.check.JudgedMix;
import org.swathbook.cli.report.LoadWords;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.tank.LoadSheet;

/** The sheet of {@code load}: verdict, loads, and what else whoever fills a sprayer needs. */
public final class LoadText {
  private LoadText() {}

  /**
   * @param sheet empty for a blocked tank: then the verdict is all
   */
  public static String of(
      Book book, ReportHead head, Field field, JudgedMix judged, Optional<LoadSheet> sheet) {
    Page page = new Page();
    HeadText.on(page, "Load sheet", head);
    page.line(CheckText.jobLine(book, field, judged.job()));
    page.blank();
    FindingText findings = new FindingText(book.catalog());
    if (sheet.isEmpty()) {
      findings.verdict(page, judged.judgement(), LoadText::belongsOnTheSheet);
      page.line("NO LOAD: this tank is blocked. 'swathbook check' looks for one that is not.");
      page.blank();
    } else {
      findings.verdict(page, judged.judgement(), LoadText::belongsOnTheSheet);
      LoadSections.of(field, sheet.get()).forEach(s -> s.on(page));
      signOff(page);
    }
    HeadText.foot(page, false);
    return page.toString();
  }

  /** Notes are left to the check; order and jar test stand on the sheet anyway. */
  public static boolean belongsOnTheSheet(Finding f) {
    return f.severity() != Severity.NOTE;
  }

  private static void signOff(Page page) {
    page.rule('-');
    page.line("To be signed");
    LoadWords.SIGN_OFF.forEach(
        line -> page.line("  " + line + " " + "_".repeat(Page.WIDTH - line.length() - 3)));
    page.blank();
  }
}
