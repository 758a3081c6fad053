package org.swathbook.cli.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.cli.report.AdjuvantNeed;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.OrderedField;
import org.swathbook.cli.report.ReportHead;
import org.swathbook.cli.report.SubstituteWords;
import org.swathbook.cli.text.OrderWords;
import org.swathbook.cli.text.ProgramWords;
import org.swathbook.measure.Money;
import org.swathbook.measure.Numbers;
import org.swathbook.plan.change.JudgedChange;
import org.swathbook.program.Dose;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.supply.OrderLine;

/** The page of {@code order}: what each grower needs, all together, and what may stand for it. */
public final class OrderHtml {
  private static final List<String> LINES =
      List.of(
          "product", "needed", "on hand, used first", "to buy", "packages", "left over", "cost, $");

  private static final List<String> INSTEAD =
      List.of(
          "product",
          "rate",
          "cost, $/acre more",
          "net, $/acre more",
          "control %, now to then",
          "verdict");

  private final Book book;
  private final OrderReport report;
  private final List<Block> blocks = new ArrayList<>();

  private OrderHtml(Book book, OrderReport report) {
    this.book = book;
    this.report = report;
  }

  public static String of(Book book, ReportHead head, OrderReport report) {
    OrderHtml html = new OrderHtml(book, report);
    html.from();
    html.lines();
    html.list(OrderWords.RESTRICTED, OrderWords.restricted(report));
    html.adjuvants();
    html.list(OrderWords.TOO_OLD, report.order().unfit().stream().map(OrderWords::unfit).toList());
    if (report.substitutesAsked()) {
      html.substitutes();
    }
    html.list("How to read the figures", OrderWords.READING);
    return Pages.fill("blocks.jte", new BlockPage(SheetHead.of("What to buy", head), html.blocks));
  }

  private void heading(String words) {
    blocks.add(new Block.Heading(words));
  }

  private void line(String css, Marked words) {
    blocks.add(new Block.Line(css, words));
  }

  private void list(String title, List<String> lines) {
    if (!lines.isEmpty()) {
      heading(title);
      lines.forEach(l -> line("fact", Marked.plain(l)));
    }
  }

  private void from() {
    if (report.fields().isEmpty()) {
      line("stop", Marked.plain("Nothing is ordered: no field has a program to buy for."));
    } else {
      heading("For these fields");
      List<List<Marked>> rows = new ArrayList<>();
      for (OrderedField f : report.fields()) {
        rows.add(
            List.of(
                Marked.plain(f.field().id() + ", " + f.field().name()),
                Marked.of(
                    Numbers.grouped(f.field().acres(), 1), "/fields/" + rows.size() + "/acres:1"),
                Marked.plain(f.program()),
                Marked.plain(f.verdict().word())));
      }
      blocks.add(new Block.Grid(List.of("field", "acres", "program", "verdict"), rows));
    }
    list(
        "Not in this order",
        report.leftOut().stream()
            .map(l -> String.join(", ", l.fields()) + ": " + l.why())
            .toList());
  }

  /** Of each grower, then of all where there are several. */
  private void lines() {
    int[] done = {0, 0};
    report
        .order()
        .byGrower()
        .forEach(
            (grower, lines) -> {
              heading(
                  (grower.isEmpty() ? "Grower not named" : grower)
                      + " · "
                      + Numbers.grouped(report.acres(grower), 1)
                      + " acres");
              table(lines, "/lines/", done[0]);
              OrderReport.Totals totals = totals(lines, "/totals/" + done[1]);
              line(
                  "small",
                  Marked.of(
                      "Products that the passes take, on hand or not: "
                          + Numbers.fixed(
                              totals.worthOfNeeded().dollars() / report.acres(grower), 2)
                          + " $/acre"
                          + (totals.unpriced().isEmpty() ? "." : " without what has no price."),
                      "/totals/" + done[1] + "/productsPerAcre"));
              done[0] += lines.size();
              done[1]++;
            });
    if (done[1] > 1) {
      heading("All together, bought as one order");
      table(report.order().pooled(), "/pooled/", 0);
      totals(report.order().pooled(), "/totals/" + done[1]);
    }
  }

  private void table(List<OrderLine> lines, String at, int from) {
    List<List<Marked>> rows = new ArrayList<>();
    for (OrderLine l : lines) {
      String one = at + (from + rows.size());
      List<String> w = OrderWords.row(l.product().id().value(), l);
      String unit = " " + w.get(4);
      rows.add(
          List.of(
              Marked.of(w.get(0), one + "/product"),
              Marked.of(w.get(1) + unit, one + "/needed"),
              Marked.of(w.get(2) + unit, one + "/onHand"),
              Marked.of(w.get(3) + unit, one + "/toBuy"),
              packages(w.get(5), l, one),
              Marked.of(w.get(6) + unit, one + "/leftOver"),
              Marked.of(w.get(7), l.cost().isPresent() ? one + "/cost" : "")));
    }
    blocks.add(new Block.Grid(LINES, rows));
  }

  /** The document has the size in the unit of the line, the words in the package's own. */
  private static Marked packages(String words, OrderLine l, String at) {
    if (l.toBuy() == 0 || l.packages().isEmpty()) {
      return Marked.plain(words);
    }
    boolean same = l.packageSize().filter(q -> q.unit() == l.unit()).isPresent();
    return Marked.of(words, at + "/packages", same ? at + "/packageSize" : "-");
  }

  private OrderReport.Totals totals(List<OrderLine> lines, String at) {
    OrderReport.Totals totals = OrderReport.totals(lines);
    line("lead", Marked.of("To order: $" + ProgramWords.money(totals.cost()), at + "/cost"));
    if (!totals.unpriced().isEmpty()) {
      line(
          "",
          Marked.plain(
              "NO PRICE, not in the sum: "
                  + String.join(", ", totals.unpriced())
                  + " (prices.csv)"));
    }
    return totals;
  }

  private void adjuvants() {
    if (report.adjuvants().isEmpty()) {
      return;
    }
    heading("Adjuvants; the book has no prices and packages of them");
    int i = 0;
    for (AdjuvantNeed a : report.adjuvants()) {
      String at = "/adjuvants/" + i++;
      String words = OrderWords.adjuvant(a);
      line(
          "fact",
          a.amount().isPresent() && a.notKnown().isEmpty()
              ? Marked.of(words, at + "/grower", at + "/adjuvant", at + "/needed")
              : Marked.plain(words));
    }
  }

  private void substitutes() {
    heading("Should a product not be had: what may take its place in that pass");
    int at = 0;
    for (OrderedField f : report.fields()) {
      for (OrderedField.InItsPlace s : f.substitutes()) {
        line("lead", Marked.plain(OrderWords.inThePlace(f, s)));
        instead(f, s.changes(), "/substitutes/" + at++ + "/instead/");
      }
    }
  }

  /** A table of them, then what the rules say of each. */
  private void instead(OrderedField f, List<JudgedChange> changes, String at) {
    if (changes.isEmpty()) {
      return;
    }
    List<List<Marked>> rows = new ArrayList<>();
    for (JudgedChange c : changes) {
      rows.add(substitute(f, c, at + rows.size()));
    }
    blocks.add(new Block.Grid(INSTEAD, rows));
    for (JudgedChange c : changes) {
      for (String l : SubstituteWords.limits(c)) {
        line("fact", Marked.plain(c.change().in().get(0).product().id() + ", " + l));
      }
    }
  }

  private List<Marked> substitute(OrderedField f, JudgedChange c, String at) {
    Dose in = c.change().in().get(0);
    List<String> control = new ArrayList<>();
    List<String> pointers = new ArrayList<>();
    for (WeedOutcome w : f.outcome().weeds()) {
      if (w.pressure().driver().isDriver()) {
        String code = w.pressure().weed().id().value();
        control.add(
            book.catalog().weed(w.pressure().weed().id()).name()
                + " "
                + Numbers.fixed(w.controlPct(), 1)
                + " to "
                + Numbers.fixed(c.outcome().weed(w.pressure().weed().id()).controlPct(), 1));
        pointers.add("- " + at + "/controlPct/" + code);
      }
    }
    return List.of(
        Marked.of(in.product().id().value(), at + "/product"),
        Marked.of(
            Numbers.decimals(in.rate().amount(), 2) + " " + in.rate().unitText(),
            at + "/unit",
            at + "/rate:2"),
        more(c.cost(), at + "/costPerAcre"),
        more(c.net(), at + "/netPerAcre"),
        Marked.of(String.join(", ", control), pointers.toArray(String[]::new)),
        Marked.of(c.judgement().verdict().word(), at + "/verdict"));
  }

  private static Marked more(Optional<Money> money, String at) {
    return money
        .map(m -> Marked.of((m.cents() > 0 ? "+" : "") + ProgramWords.money(m), at))
        .orElse(Marked.plain("not known"));
  }
}
