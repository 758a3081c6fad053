package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.FederalRecord;
import org.swathbook.cli.report.RecordedPass;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.rules.Severity;
import org.swathbook.tank.PouredAmount;

/** What {@code record} wrote. */
public final class RecordText {
  private final Page page = new Page();

  private RecordText() {}

  public static String of(Book book, ReportHead head, RecordedPass pass) {
    RecordText text = new RecordText();
    HeadText.on(text.page, "Record", head);
    text.written(book, pass);
    text.federal(pass.federal(), head);
    pass.judgement()
        .ifPresent(
            j ->
                new FindingText(book.catalog())
                    .verdict(text.page, j, f -> f.severity() != Severity.NOTE));
    HeadText.foot(text.page, false);
    return text.page.toString();
  }

  private void written(Book book, RecordedPass pass) {
    List<String> keys = pass.written().keys();
    page.line(
        "WRITTEN into applications.csv: "
            + (keys.size() == 1
                ? keys.get(0)
                : pass.written().ids().get(0) + ", " + keys.size() + " lines"));
    page.line(
        pass.field().id()
            + ", "
            + pass.field().name()
            + ", "
            + book.catalog().crop(pass.field().crop()).name()
            + ", "
            + Figures.date(pass.date()));
    if (pass.written().rows().isEmpty()) {
      page.line("  Voids the row that it names.");
    }
    Table table = new Table(2, "lllll");
    pass.written().rows().forEach(a -> table.row(row(a)));
    table.on(page);
    page.blank();
    List<String> notes = pass.notes();
    notes.forEach(n -> page.wrapped(0, 2, n));
    if (!notes.isEmpty()) {
      page.blank();
    }
  }

  private static String[] row(Application a) {
    Dose d = a.dose();
    Rate rate = d.named() ? d.actives().get(0).rate() : d.rate();
    return new String[] {
      a.line(),
      d.named() ? d.actives().get(0).ingredient().name() : d.product().name(),
      Numbers.decimals(rate.amount(), 4) + " " + rate.unitText(),
      a.acres().isPresent() ? Numbers.grouped(a.acres().getAsDouble(), 2) + " acres" : "",
      RecordedPass.total(a)
          .map(q -> PouredAmount.of(q, PouredAmount.Toward.LESS).words())
          .orElse(d.named() ? "of which product is not said" : "")
    };
  }

  private void federal(FederalRecord federal, ReportHead head) {
    if (!federal.unknown().isEmpty()) {
      page.wrapped(
          0,
          2,
          "Whether it is for restricted use is NOT KNOWN to the catalog: "
              + Figures.list(federal.unknown())
              + ". If the label says so, a record is to be kept of it too.");
    }
    if (!federal.restricted().isEmpty()) {
      String what = "Restricted use: " + Figures.list(federal.restricted()) + ". ";
      if (federal.missing().isEmpty()) {
        page.wrapped(
            0,
            2,
            what + "The row holds what the federal record asks for; states may ask for more.");
      } else {
        page.wrapped(0, 2, what + "The federal record (7 CFR 110.3, from memory) still lacks:");
        federal.missing().forEach(m -> page.wrapped(2, 4, "- " + m));
        long left = federal.daysLeft(head.today());
        page.wrapped(
            0,
            2,
            left >= 0
                ? "To be written down by "
                    + Figures.date(federal.due())
                    + ", "
                    + Figures.counted((int) left, "day", "days")
                    + " from today, with 'record --corrects'; states may ask for more, and sooner."
                : "It was to be written down by "
                    + Figures.date(federal.due())
                    + ", "
                    + Figures.counted((int) -left, "day", "days")
                    + " ago. Write it down now, with 'record --corrects'.");
      }
    }
    if (!federal.unknown().isEmpty() || !federal.restricted().isEmpty()) {
      page.blank();
    }
  }
}
