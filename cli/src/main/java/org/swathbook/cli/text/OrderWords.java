package org.swathbook.cli.text;

import java.util.List;
import java.util.stream.Stream;
import org.swathbook.book.HeldStock;
import org.swathbook.catalog.ProductId;
import org.swathbook.cli.report.AdjuvantNeed;
import org.swathbook.cli.report.OrderReport;
import org.swathbook.cli.report.OrderedField;
import org.swathbook.measure.Numbers;
import org.swathbook.supply.OrderLine;
import org.swathbook.supply.Unfit;

/** An order in words, whatever it is printed on. */
public final class OrderWords {
  /** How to read the figures. */
  public static final List<String> READING =
      List.of(
          "What is on hand goes to the passes in the order of their dates: first the grower's own"
              + " (stock.csv), then the warehouse's. The rest is rounded up to whole packages.",
          "Amounts are the rate times all acres of the field, for passes that are still to come. What"
              + " is spilled, left in the boom or sprayed twice is not in them.");

  public static final String RESTRICTED = "Restricted use";

  public static final String TOO_OLD = "On hand, but too old for a pass that needs it";

  private OrderWords() {}

  /** Product, needed, on hand, to buy, unit, packages, left over, cost. */
  public static List<String> row(String name, OrderLine l) {
    return List.of(
        name,
        figure(l.needed()),
        figure(l.onHand()),
        figure(l.toBuy()),
        l.unit().symbol(),
        l.toBuy() == 0
            ? "none"
            : l.packages().isPresent()
                ? l.packages().getAsLong() + " x " + l.packageSize().orElseThrow()
                : "size not known",
        figure(l.leftOver()),
        l.cost().map(Figures::money).orElse("NO PRICE"));
  }

  private static String figure(double value) {
    return value == 0 ? "0" : Numbers.fixed(value, value < 1 ? 3 : 2);
  }

  public static String adjuvant(AdjuvantNeed a) {
    String amount = a.amount().map(q -> figure(q.value()) + " " + q.unit().symbol()).orElse("");
    String unknown =
        a.notKnown().isEmpty() ? "" : "amount NOT KNOWN of " + String.join("; ", a.notKnown());
    return Stream.of(a.grower(), a.kind() + (amount.isEmpty() ? "" : " " + amount), unknown)
        .filter(w -> !w.isEmpty())
        .reduce((x, y) -> x + ": " + y)
        .orElse("");
  }

  /** Products of an order that are for certified applicators; empty for none. */
  public static List<String> restricted(OrderReport report) {
    List<String> products = report.restrictedUse().stream().map(ProductId::value).toList();
    return products.isEmpty()
        ? List.of()
        : List.of(
            Figures.list(products)
                + ": only a certified applicator may buy and apply it, or supervise (US federal"
                + " rules on restricted-use pesticides; from memory). States may restrict more.");
  }

  /** What is on hand and too old for a pass. */
  public static String unfit(Unfit u) {
    HeldStock h = u.stock();
    return h.product()
        + ", "
        + h.amount()
        + h.grower().map(g -> " of " + g).orElse(" in the warehouse")
        + ": good until "
        + h.goodUntil().map(Figures::date).orElse("")
        + ", the pass on "
        + u.field()
        + " comes "
        + Figures.date(u.date());
  }

  /** Which product of which pass others may stand for, and whether any was found. */
  public static String inThePlace(OrderedField f, OrderedField.InItsPlace s) {
    return f.field().id()
        + ", pass "
        + s.pass()
        + ", in the place of "
        + s.out().product().id()
        + " "
        + Figures.rate(s.out().rate())
        + (s.changes().isEmpty()
            ? ": NOTHING legal that does its work was found; 'plan --keep' may change more"
            : "")
        + s.failing().map(w -> ". " + w.words()).orElse("");
  }
}
