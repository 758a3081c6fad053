package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.book.Field;
import org.swathbook.book.HeldStock;
import org.swathbook.book.Prices;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Quantity;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;
import org.swathbook.source.Texts;

/**
 * Reads {@code stock.csv}: what is in a grower's shed, or in the warehouse where no grower stands.
 * One amount stands in one place only: what is in the warehouse may be written beside the price
 * instead, and never in both.
 */
final class StockReader {
  static final Table TABLE =
      new Table(
          "stock.csv",
          CsvColumns.required("product", "amount").andOptional("grower", "goodUntil", "note"));

  private final DoseParser doses;
  private final Prices prices;
  private final List<Field> fields;
  private final Problems problems;
  private final Set<String> seen = new HashSet<>();
  private final List<HeldStock> rows = new ArrayList<>();

  /**
   * @param fields those of the book; none when some could not be read, and then any grower will do
   */
  StockReader(Names names, List<Field> fields, Prices prices, Problems problems) {
    this.doses = new DoseParser(names, prices);
    this.prices = prices;
    this.fields = fields;
    this.problems = problems;
  }

  /** The prices with what the table says is there; the same when there is none. */
  Prices read(Path book) {
    if (!TABLE.isThere(book)) {
      return prices;
    }
    TABLE.read(book, problems, this::row);
    return prices.withHeld(rows);
  }

  private void row(CsvRow csv) {
    Row row = new Row(csv, problems);
    Optional<Product> product = row.need("product", doses::product, "glyphosate-4.5sl");
    Optional<String> grower = row.find("grower", this::grower, "Hill Farm");
    Optional<LocalDate> good = row.find("goodUntil", Texts::date, "2027-12-31");
    if (product.isEmpty()) {
      return;
    }
    Product p = product.get();
    Optional<Quantity> amount = row.need("amount", PricesReader.amount(p), "24 gal");
    if (!row.isSound()) {
      return;
    }
    if (!seen.add(grower.orElse("") + "\n" + p.id() + "\n" + good)) {
      row.problem(
          "product",
          p.id() + " of the same place and date stands here already",
          "add the amounts up in one row");
    } else if (grower.isEmpty() && isBesideItsPrice(p)) {
      row.problem(
          "product",
          "prices.csv has an amount of " + p.id() + " in the warehouse too",
          "leave its onHand blank there, or take this row out");
    } else {
      rows.add(new HeldStock(p.id(), grower, amount.orElseThrow(), good));
    }
  }

  private boolean isBesideItsPrice(Product p) {
    return Optional.ofNullable(prices.stock().get(p.id()))
        .flatMap(Prices.Stock::onHand)
        .filter(q -> q.value() > 0)
        .isPresent();
  }

  /** As fields.csv writes the name. */
  private String grower(String text) {
    TreeSet<String> known = new TreeSet<>();
    fields.stream().map(Field::grower).filter(g -> !g.isEmpty()).forEach(known::add);
    return fields.isEmpty()
        ? text
        : known.stream()
            .filter(g -> g.equalsIgnoreCase(text.strip()))
            .findFirst()
            .orElseThrow(() -> Names.unknown(text, "grower of fields.csv", known));
  }
}
