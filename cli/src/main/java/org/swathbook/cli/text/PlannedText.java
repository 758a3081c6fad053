package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.audit.PassMatch;
import org.swathbook.audit.PlannedAndApplied;
import org.swathbook.audit.PlannedAndApplied.Account;
import org.swathbook.book.Book;
import org.swathbook.cli.report.ReportHead;

/** A program beside the journal of its season. */
public final class PlannedText {
  private final Book book;
  private final Page page = new Page();

  private PlannedText(Book book) {
    this.book = book;
  }

  public static String of(Book book, ReportHead head, PlannedAndApplied compared) {
    PlannedText text = new PlannedText(book);
    HeadText.on(text.page, PlannedWords.TITLE, head);
    text.body(compared);
    text.page.rule('=');
    text.page.line("How to read the figures");
    for (String line : PlannedWords.READING) {
      text.page.wrapped(2, 4, line);
    }
    text.page.blank();
    HeadText.foot(text.page, false);
    return text.page.toString();
  }

  private void body(PlannedAndApplied c) {
    page.wrapped(0, 2, PlannedWords.heading(book, c));
    page.blank();
    c.passes().forEach(this::pass);
    page.blank();
    accounts(c.accounts());
    PlannedWords.seen(c).forEach(s -> page.wrapped(0, 2, s));
    c.notes().forEach(n -> page.wrapped(0, 2, n));
    page.blank();
  }

  private void pass(PassMatch p) {
    page.wrapped(0, 2, PlannedWords.pass(p));
    PlannedWords.otherwise(p).forEach(l -> page.wrapped(4, 6, l));
  }

  private void accounts(List<Account> accounts) {
    Table table = new Table(0, "l" + "r".repeat(accounts.size()));
    table.row(PlannedWords.accountHead(accounts));
    PlannedWords.accounts(accounts).forEach(table::row);
    table.on(page);
    page.blank();
  }
}
