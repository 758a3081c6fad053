package org.swathbook.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.catalog.ProductId;
import org.swathbook.cli.report.SheetTable.Cell;
import org.swathbook.measure.Quantity;
import org.swathbook.supply.OrderLine;

/** An order as tables of a spreadsheet. */
public final class OrderTable {
  private static final String ALL = "all together";
  private static final String CAUTION = "The label is the law; check it before buying and spraying";
  private static final Cell BLANK = Cell.of("");

  private static final List<String> COLUMNS =
      List.of(
          "buyer",
          "kind",
          "product",
          "needed",
          "onHand",
          "toBuy",
          "amountUnit",
          "packages",
          "packageSize",
          "packageUnit",
          "leftOver",
          "leftOverUnit",
          "price",
          "priceUnit",
          "cost",
          "costUnit",
          "note",
          "caution");

  private OrderTable() {}

  /** Lines of each grower, then of all together, each with its buyer. */
  public static SheetTable lines(OrderReport report) {
    List<List<Cell>> rows = new ArrayList<>();
    List<ProductId> restricted = report.restrictedUse();
    report
        .order()
        .byGrower()
        .forEach(
            (grower, lines) -> {
              lines.forEach(l -> rows.add(row(grower, l, restricted)));
              report.adjuvants().stream()
                  .filter(a -> a.grower().equals(grower))
                  .forEach(a -> rows.add(row(a)));
            });
    report.order().pooled().forEach(l -> rows.add(row(ALL, l, restricted)));
    return new SheetTable("Order", COLUMNS, rows);
  }

  /** What the order rests on and the cautions, a line each. */
  public static SheetTable remarks(ReportHead head, OrderReport report) {
    List<List<Cell>> rows = new ArrayList<>();
    Cautions.ALL.forEach(c -> rows.add(List.of(Cell.of("caution"), Cell.of(c))));
    rows.add(List.of(Cell.of("book"), Cell.of(head.book())));
    rows.add(List.of(Cell.of("today"), Cell.of(head.today().toString())));
    report
        .fields()
        .forEach(
            f ->
                rows.add(
                    List.of(
                        Cell.of("from"),
                        Cell.of(f.field().id() + ": " + f.program() + ", " + f.verdict().word()))));
    report
        .leftOut()
        .forEach(
            l ->
                rows.add(
                    List.of(
                        Cell.of("not in it"),
                        Cell.of(String.join(", ", l.fields()) + ": " + l.why()))));
    head.notes().forEach(n -> rows.add(List.of(Cell.of("note"), Cell.of(n))));
    return new SheetTable("Read this", List.of("about", "words"), rows);
  }

  private static List<Cell> row(String buyer, OrderLine l, List<ProductId> restricted) {
    String unit = l.unit().symbol();
    List<Cell> row = new ArrayList<>();
    row.add(Cell.of(buyer));
    row.add(Cell.of("product"));
    row.add(Cell.of(l.product().id().value()));
    row.add(Cell.of(l.needed(), 3));
    row.add(Cell.of(l.onHand(), 3));
    row.add(Cell.of(l.toBuy(), 3));
    row.add(Cell.of(unit));
    row.add(l.packages().isPresent() ? Cell.of((double) l.packages().getAsLong(), 0) : BLANK);
    row.add(l.packageSize().map(Quantity::value).map(v -> Cell.of(v, 3)).orElse(BLANK));
    row.add(Cell.of(l.packageSize().map(q -> q.unit().symbol()).orElse("")));
    row.add(Cell.of(l.leftOver(), 3));
    row.add(Cell.of(unit));
    row.add(l.price().map(p -> Cell.of(p.dollars(), 2)).orElse(BLANK));
    row.add(Cell.of(l.price().map(p -> "$/" + p.per().symbol()).orElse("")));
    row.add(l.cost().map(c -> Cell.of(c.dollars(), 2)).orElse(BLANK));
    row.add(Cell.of(l.cost().isPresent() ? "$" : ""));
    row.add(Cell.of(note(l, restricted)));
    row.add(Cell.of(CAUTION));
    return row;
  }

  private static String note(OrderLine l, List<ProductId> restricted) {
    List<String> notes = new ArrayList<>();
    if (restricted.contains(l.product().id())) {
      notes.add("restricted use: for certified applicators to buy");
    }
    if (l.price().isEmpty()) {
      notes.add("no price in the book");
    }
    if (l.packageSize().isEmpty()) {
      notes.add("package not known: the bare amount");
    }
    return String.join("; ", notes);
  }

  private static List<Cell> row(AdjuvantNeed a) {
    List<Cell> row = new ArrayList<>();
    row.add(Cell.of(a.grower()));
    row.add(Cell.of("adjuvant"));
    row.add(Cell.of(a.kind()));
    Cell amount = a.amount().map(q -> Cell.of(q.value(), 3)).orElse(BLANK);
    row.add(amount);
    row.add(BLANK);
    row.add(amount);
    row.add(Cell.of(a.amount().map(q -> q.unit().symbol()).orElse("")));
    while (row.size() < COLUMNS.size() - 2) {
      row.add(BLANK);
    }
    row.add(
        Cell.of(
            "no price in the book"
                + (a.notKnown().isEmpty()
                    ? ""
                    : "; amount not known: " + String.join("; ", a.notKnown()))));
    row.add(Cell.of(CAUTION));
    return row;
  }
}
