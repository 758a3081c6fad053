package org.swathbook.cli.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.swathbook.audit.ActiveLedger;
import org.swathbook.audit.OpenIntervals;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.cli.report.ReportHead;

/** The ledger of fields: used and left, and what intervals still keep off. */
public final class LedgerText {
  private final Book book;
  private final Page page = new Page();

  private LedgerText(Book book) {
    this.book = book;
  }

  public static String of(Book book, ReportHead head, Map<Field, List<ActiveLedger>> ledgers) {
    LedgerText text = new LedgerText(book);
    HeadText.on(text.page, "Ledger", head);
    text.page.wrapped(
        0,
        2,
        "By the journal up to today, as if every row had met the same ground: the sums of the"
            + " worst-treated part of a field. lb/acre.");
    text.page.blank();
    ledgers.forEach(text::field);
    HeadText.foot(text.page, false);
    return text.page.toString();
  }

  private void field(Field field, List<ActiveLedger> actives) {
    page.rule('-');
    page.line(FieldText.named(book, field) + ", season " + book.season());
    if (actives.isEmpty()) {
      page.line("  Nothing counts today, and no interval is open.");
    } else {
      table(page, actives);
    }
    page.blank();
    actives.forEach(this::open);
    if (!actives.isEmpty()) {
      page.blank();
    }
  }

  static void table(Page page, List<ActiveLedger> actives) {
    Table table = new Table(2, "lrrrll");
    table.row(LedgerWords.HEADS);
    LedgerWords.rows(actives).forEach(table::row);
    table.on(page);
  }

  private void open(ActiveLedger a) {
    List<String> parts = new ArrayList<>();
    OpenIntervals u = a.until();
    u.reentry()
        .ifPresent(
            t -> parts.add("no entry before " + day(t.toLocalDate()) + ", " + t.toLocalTime()));
    u.repeat().ifPresent(d -> parts.add("not again before " + day(d)));
    u.harvest()
        .forEach((c, d) -> parts.add("no " + c.name().toLowerCase(Locale.ROOT) + " " + before(d)));
    u.nextCrop()
        .forEach(
            (c, d) ->
                parts.add(
                    "no "
                        + book.catalog().findCrop(c.value()).map(x -> x.name()).orElse(c.value())
                        + " planted "
                        + before(d)));
    if (!parts.isEmpty()) {
      page.wrapped(2, 4, a.ingredient().name() + ": " + String.join("; ", parts));
    }
    if (!a.notKnown().isEmpty()) {
      page.wrapped(2, 4, a.ingredient().name() + ": NOT KNOWN: " + String.join("; ", a.notKnown()));
    }
  }

  private static String before(LocalDate d) {
    return d.getYear() > 9999 ? "at all" : "before " + day(d);
  }

  private static String day(LocalDate d) {
    return Figures.date(d);
  }
}
