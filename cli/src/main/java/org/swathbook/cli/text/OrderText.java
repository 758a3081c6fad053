package org.swathbook.cli.text;

import java.util.List;
import org.swathbook.book.Book;
import org.swathbook.cli.report.Cautions;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.OrderedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SubstituteWords;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.change.JudgedChange;
import org.swathbook.supply.OrderLine;

/** The report of {@code order}. */
public final class OrderText {
  private static final int LONGEST_NAME = 26;

  private final OrderReport report;
  private final Page page = new Page();

  private OrderText(OrderReport report) {
    this.report = report;
  }

  public static String of(Book book, ReportHead head, OrderReport report) {
    OrderText text = new OrderText(report);
    HeadText.on(text.page, "What to buy", head);
    text.from();
    text.leftOut();
    report.order().byGrower().forEach(text::grower);
    if (report.order().byGrower().size() > 1) {
      text.pooled();
    }
    text.list(OrderWords.RESTRICTED, OrderWords.restricted(report));
    text.adjuvants();
    text.list(OrderWords.TOO_OLD, report.order().unfit().stream().map(OrderWords::unfit).toList());
    if (report.substitutesAsked()) {
      text.substitutes(book);
    }
    text.reading();
    HeadText.foot(text.page, false);
    return text.page.toString();
  }

  /** What is printed beside a file that was written. */
  public static String besideAFile(OrderReport report) {
    OrderText text = new OrderText(report);
    text.leftOut();
    Cautions.ALL.forEach(c -> text.page.wrapped(0, 2, c));
    return text.page.toString();
  }

  private void from() {
    if (report.fields().isEmpty()) {
      page.line("Nothing is ordered: no field has a program to buy for.");
      page.blank();
      return;
    }
    page.line("For");
    Table table = new Table(2, "lrll");
    for (OrderedField f : report.fields()) {
      table.row(
          f.field().id() + "  " + f.field().name(),
          Numbers.grouped(f.field().acres(), 1) + " acres",
          f.verdict().word(),
          f.program());
    }
    table.on(page);
    page.blank();
  }

  private void leftOut() {
    if (report.leftOut().isEmpty()) {
      return;
    }
    page.line("Not in this order");
    report
        .leftOut()
        .forEach(l -> page.wrapped(2, 4, String.join(", ", l.fields()) + ": " + l.why()));
    page.blank();
  }

  private void grower(String grower, List<OrderLine> lines) {
    double acres = report.acres(grower);
    page.line(
        (grower.isEmpty() ? "Grower not named" : grower)
            + " · "
            + Numbers.grouped(acres, 1)
            + " acres");
    OrderReport.Totals totals = table(lines);
    page.wrapped(
        2,
        4,
        "Products that the passes take come to "
            + Figures.money(totals.worthOfNeeded())
            + " $, "
            + Numbers.fixed(totals.worthOfNeeded().dollars() / acres, 2)
            + " $/acre"
            + (totals.unpriced().isEmpty() ? "." : " without what has no price."));
    page.blank();
  }

  private void pooled() {
    page.line("All together, bought as one order");
    table(report.order().pooled());
    page.blank();
  }

  private OrderReport.Totals table(List<OrderLine> lines) {
    Table table = new Table(2, "lrrrllrr");
    table.row("product", "needed", "on hand", "to buy", "", "packages", "left over", "cost $");
    for (OrderLine l : lines) {
      String name = l.product().id().value();
      // A name that is too long goes on at the next row, cut where it has a hyphen.
      while (name.length() > LONGEST_NAME && name.lastIndexOf('-', LONGEST_NAME - 1) > 0) {
        int cut = name.lastIndexOf('-', LONGEST_NAME - 1) + 1;
        table.row(name.substring(0, cut), "", "", "", "", "", "", "");
        name = "  " + name.substring(cut);
      }
      table.row(OrderWords.row(name, l));
    }
    table.on(page);
    OrderReport.Totals totals = OrderReport.totals(lines);
    page.wrapped(2, 4, "To order: " + Figures.money(totals.cost()) + " $");
    if (!totals.unpriced().isEmpty()) {
      page.wrapped(
          2, 4, "NO PRICE, not in the sum: " + Figures.list(totals.unpriced()) + " (prices.csv)");
    }
    return totals;
  }

  private void adjuvants() {
    if (report.adjuvants().isEmpty()) {
      return;
    }
    page.line("Adjuvants; the book has no prices and packages of them");
    report.adjuvants().forEach(a -> page.wrapped(2, 4, OrderWords.adjuvant(a)));
    page.blank();
  }

  private void list(String title, List<String> lines) {
    if (!lines.isEmpty()) {
      page.line(title);
      lines.forEach(l -> page.wrapped(2, 4, l));
      page.blank();
    }
  }

  private void substitutes(Book book) {
    page.line("Should a product not be had: what may take its place in that pass");
    for (OrderedField f : report.fields()) {
      for (OrderedField.InItsPlace s : f.substitutes()) {
        page.wrapped(2, 4, OrderWords.inThePlace(f, s));
        for (JudgedChange c : s.changes()) {
          page.wrapped(4, 6, SubstituteWords.of(book, f.outcome(), c));
          SubstituteWords.limits(c).forEach(l -> page.wrapped(6, 8, l));
        }
      }
    }
    page.blank();
  }

  private void reading() {
    for (String line : OrderWords.READING) {
      page.wrapped(0, 2, line);
    }
    page.blank();
  }
}
