package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.book.HeldStock;
import org.swathbook.cli.report.AdjuvantNeed;
import org.swathbook.cli.report.Cautions;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.OrderedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SubstituteWords;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.plan.JudgedChange;
import org.swathbook.supply.OrderLine;
import org.swathbook.supply.Unfit;

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
    text.adjuvants();
    text.unfit();
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
          Numbers.decimals(f.field().acres(), 1) + " acres",
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
            + Numbers.decimals(acres, 1)
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
      table.row(row(name, l));
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

  private static List<String> row(String name, OrderLine l) {
    List<String> row = new ArrayList<>();
    row.add(name);
    row.add(figure(l.needed()));
    row.add(figure(l.onHand()));
    row.add(figure(l.toBuy()));
    row.add(l.unit().symbol());
    row.add(
        l.toBuy() == 0
            ? "none"
            : l.packages().isPresent()
                ? l.packages().getAsLong() + " x " + l.packageSize().orElseThrow()
                : "size not known");
    row.add(figure(l.leftOver()));
    row.add(l.cost().map(Figures::money).orElse("NO PRICE"));
    return row;
  }

  private static String amount(double value, Unit unit) {
    return figure(value) + " " + unit.symbol();
  }

  private static String figure(double value) {
    return value == 0 ? "0" : Numbers.fixed(value, value < 1 ? 3 : 2);
  }

  private void adjuvants() {
    if (report.adjuvants().isEmpty()) {
      return;
    }
    page.line("Adjuvants; the book has no prices and packages of them");
    for (AdjuvantNeed a : report.adjuvants()) {
      String amount = a.amount().map((Quantity q) -> amount(q.value(), q.unit())).orElse("");
      String unknown =
          a.notKnown().isEmpty() ? "" : "amount NOT KNOWN of " + String.join("; ", a.notKnown());
      page.wrapped(
          2,
          4,
          Stream.of(a.grower(), a.kind() + (amount.isEmpty() ? "" : " " + amount), unknown)
              .filter(w -> !w.isEmpty())
              .reduce((x, y) -> x + ": " + y)
              .orElse(""));
    }
    page.blank();
  }

  private void unfit() {
    if (report.order().unfit().isEmpty()) {
      return;
    }
    page.line("On hand, but too old for a pass that needs it");
    for (Unfit u : report.order().unfit()) {
      HeldStock h = u.stock();
      page.wrapped(
          2,
          4,
          h.product()
              + ", "
              + h.amount()
              + h.grower().map(g -> " of " + g).orElse(" in the warehouse")
              + ": good until "
              + h.goodUntil().map(Figures::date).orElse("")
              + ", the pass on "
              + u.field()
              + " comes "
              + Figures.date(u.date()));
    }
    page.blank();
  }

  private void substitutes(Book book) {
    page.line("Should a product not be had: what may take its place in that pass");
    for (OrderedField f : report.fields()) {
      for (OrderedField.InItsPlace s : f.substitutes()) {
        page.wrapped(
            2,
            4,
            f.field().id()
                + ", pass "
                + s.pass()
                + ", in the place of "
                + s.out().product().id()
                + " "
                + Figures.rate(s.out().rate())
                + (s.changes().isEmpty()
                    ? ": NOTHING legal that does its work was found; 'plan --keep' may change more"
                    : ""));
        for (JudgedChange c : s.changes()) {
          page.wrapped(4, 6, SubstituteWords.of(book, f.outcome(), c));
          SubstituteWords.limits(c).forEach(l -> page.wrapped(6, 8, l));
        }
      }
    }
    page.blank();
  }

  private void reading() {
    for (String line : READING) {
      page.wrapped(0, 2, line);
    }
    page.blank();
  }

  private static final String[] READING = {
    "What is on hand goes to the passes in the order of their dates: first the grower's own (stock.csv),"
        + " then the warehouse's. The rest is rounded up to whole packages.",
    "Amounts are the rate times all acres of the field, for passes that are still to come. What is"
        + " spilled, left in the boom or sprayed twice is not in them.",
  };
}
