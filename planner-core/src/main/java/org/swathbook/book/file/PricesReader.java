package org.swathbook.book.file;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.swathbook.book.Prices;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Price;
import org.swathbook.measure.Quantity;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;
import org.swathbook.source.TextParser;

/** Reads {@code prices.csv}: a liquid by volume, a dry product by weight. */
final class PricesReader {
  static final Table TABLE =
      new Table(
          "prices.csv", CsvColumns.required("product", "price").andOptional("package", "onHand"));

  private final DoseParser doses;
  private final Problems problems;
  private final Set<ProductId> seen = new HashSet<>();
  private final TreeMap<ProductId, Price> prices = new TreeMap<>();
  private final TreeMap<ProductId, Prices.Stock> stock = new TreeMap<>();

  PricesReader(Names names, Problems problems) {
    this.doses = new DoseParser(names, new Prices(new TreeMap<>()));
    this.problems = problems;
  }

  Prices read(Path book) {
    TABLE.read(book, problems, this::row);
    return new Prices(prices, stock, List.of());
  }

  private void row(CsvRow csv) {
    Row row = new Row(csv, problems);
    Optional<Product> product = row.need("product", doses::product, "glyphosate-4.5sl");
    if (product.isEmpty()) {
      return;
    }
    Product p = product.get();
    if (!seen.add(p.id())) {
      row.problem("product", p.id() + " has a price already", "keep one row for each product");
    }
    Dimension fits = p.spoken().unit().dimension();
    Optional<Price> price = row.need("price", t -> price(t, p, fits), example(fits, " $/"));
    Optional<Quantity> size = row.find("package", amount(p, fits), example(fits, " "));
    Optional<Quantity> onHand = row.find("onHand", amount(p, fits), example(fits, " "));
    price.ifPresent(v -> prices.put(p.id(), v));
    if (size.filter(q -> q.value() == 0).isPresent()) {
      row.problem(
          "package", "a package of nothing", "write for example '" + example(fits, " ") + "'");
    }
    stock.put(p.id(), new Prices.Stock(size, onHand));
  }

  private static Price price(String text, Product product, Dimension fits) {
    Price price = Price.parse(text);
    if (price.per().dimension() != fits) {
      throw new MeasureException(
          "'" + text + "' does not fit " + kind(product, fits) + example(fits, " $/") + "'");
    }
    return price;
  }

  /** An amount of a product, of a liquid by volume and of a dry one by weight; zero or more. */
  static TextParser<Quantity> amount(Product product) {
    return amount(product, product.spoken().unit().dimension());
  }

  private static TextParser<Quantity> amount(Product product, Dimension fits) {
    return text -> {
      Quantity q = Quantity.parse(text);
      if (q.unit().dimension() != fits || q.value() < 0) {
        throw new MeasureException(
            "'" + text + "' does not fit " + kind(product, fits) + example(fits, " ") + "'");
      }
      return q;
    };
  }

  private static String kind(Product product, Dimension fits) {
    return product.id()
        + (fits == Dimension.VOLUME ? ", a liquid" : ", which is dry")
        + "; write for example '";
  }

  private static String example(Dimension fits, String between) {
    return "24" + between + (fits == Dimension.VOLUME ? "gal" : "lb");
  }
}
