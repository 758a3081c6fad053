package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.file.WatchFile;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.escapes.EscapeReport;
import org.swathbook.escapes.Suspicion;
import org.swathbook.escapes.WeedReading;

/** What was seen after a pass and what to do about it: the action first. */
public final class EscapesText {
  private final EscapeReport report;
  private final EscapesWords words;
  private final Page page = new Page();

  private EscapesText(Book book, EscapeReport report) {
    this.report = report;
    this.words = new EscapesWords(book, report);
  }

  /**
   * @param watch rows that a suspicion is worth in watch.csv
   */
  public static String of(
      Book book, ReportHead head, Field field, EscapeReport report, List<WatchFile.Entry> watch) {
    EscapesText text = new EscapesText(book, report);
    HeadText.on(text.page, "After a pass", head);
    text.page.line(
        FieldText.named(book, field)
            + ", sprayed "
            + Figures.date(report.seen().sprayed())
            + ", seen "
            + Figures.date(report.seen().seen()));
    text.page.wrapped(0, 2, text.words.sprayed().get(1));
    text.page.blank();
    text.action();
    report.weeds().forEach(text::weed);
    text.cost();
    text.respray();
    text.beside();
    text.watch(watch);
    HeadText.foot(text.page, false);
    return text.page.toString();
  }

  private void action() {
    page.line(words.action());
    report.why().forEach(r -> page.wrapped(2, 4, "- " + r));
    words.aboveLabels().ifPresent(r -> page.wrapped(2, 4, "- " + r));
    report
        .lookAgain()
        .ifPresent(
            d -> {
              page.line("  Look again on " + Figures.date(d) + " for:");
              report.weeds().stream()
                  .filter(w -> w.tooEarly() || w.undecided() > 0)
                  .flatMap(w -> w.yetToTell().stream())
                  .distinct()
                  .forEach(s -> page.wrapped(4, 6, s));
            });
    page.blank();
  }

  private void weed(WeedReading w) {
    page.rule('-');
    page.line(words.name(w));
    words.reading(w).forEach(l -> page.wrapped(2, 4, l));
    suspicion(w);
    page.blank();
  }

  private void suspicion(WeedReading w) {
    Suspicion s = w.suspicion();
    page.line("  Suspicion of resistance: " + s.level().word());
    s.evidenceFor().forEach(e -> page.wrapped(4, 8, "for: " + e));
    s.evidenceAgainst().forEach(e -> page.wrapped(4, 8, "against: " + e));
    s.unknown().forEach(e -> page.wrapped(4, 8, "not written down: " + e));
    if (s.isWorthATest()) {
      page.wrapped(4, 6, EscapesWords.TEST);
    }
  }

  private void cost() {
    page.rule('-');
    page.line("What the survivors cost when nothing more is done");
    words.cost().forEach(l -> page.wrapped(2, 4, l));
    page.blank();
  }

  private void respray() {
    if (!report.respray().isEmpty()) {
      page.line(words.resprayTitle());
      Table table = new Table(2, "lllrrrr");
      table.row("product", "site", "days", "at in", "control %", "cost $", "saves $");
      words.respray().forEach(table::row);
      table.on(page);
      words.resprayNotes().forEach(l -> page.wrapped(2, 4, l));
      page.blank();
    }
    if (!report.refused().isEmpty()) {
      page.line("Not offered, and why");
      words.refused().forEach(l -> page.wrapped(2, 4, l));
      page.blank();
    }
  }

  private void beside() {
    if (!report.beside().isEmpty()) {
      page.line("Without a sprayer");
      report.beside().forEach(b -> page.wrapped(2, 4, b));
      page.blank();
    }
  }

  private void watch(List<WatchFile.Entry> entries) {
    if (!entries.isEmpty()) {
      page.line("For watch.csv; --watch adds it");
      EscapesWords.watch(entries).forEach(l -> page.wrapped(2, 4, l));
      page.blank();
    }
  }
}
