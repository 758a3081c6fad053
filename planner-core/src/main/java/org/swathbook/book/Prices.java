package org.swathbook.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Concentration;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Money;
import org.swathbook.measure.Price;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;

/**
 * What products cost, how they are packed, and what of them is there already. A product without a
 * price costs nobody knows what.
 *
 * @param held rows of the table of stock, in its order
 */
public record Prices(
    Map<ProductId, Price> products, Map<ProductId, Stock> stock, List<HeldStock> held) {

  public Prices {
    products = Ordered.map(products);
    stock = Ordered.map(stock);
    held = List.copyOf(held);
  }

  public Prices(Map<ProductId, Price> products) {
    this(products, Map.of(), List.of());
  }

  public Prices withHeld(List<HeldStock> rows) {
    return new Prices(products, stock, rows);
  }

  /** All that is there of a product: what stands beside its price, then the rows of the stock. */
  public List<HeldStock> heldOf(ProductId product) {
    List<HeldStock> out = new ArrayList<>();
    Optional.ofNullable(stock.get(product))
        .flatMap(Stock::onHand)
        .filter(q -> q.value() > 0)
        .ifPresent(q -> out.add(new HeldStock(product, Optional.empty(), q, Optional.empty())));
    held.stream().filter(h -> h.product().equals(product)).forEach(out::add);
    return out;
  }

  /** Smallest amount sold, and what is in the warehouse. */
  public record Stock(Optional<Quantity> packageSize, Optional<Quantity> onHand) {}

  /**
   * The product by which a bare ingredient is bought: of those that hold it alone the one whose
   * active costs least, by id among equals; the first by id when none has a price; empty when no
   * product holds it alone.
   */
  public Optional<Product> cheapestSingle(Catalog catalog, Ingredient ingredient) {
    return catalog.singles(ingredient.id()).stream()
        .min(
            (a, b) -> {
              int c =
                  Double.compare(
                      dollarsPerKgActive(a, ingredient), dollarsPerKgActive(b, ingredient));
              return c != 0 ? c : a.id().compareTo(b.id());
            });
  }

  /** Infinite without a price. */
  private double dollarsPerKgActive(Product product, Ingredient ingredient) {
    Price price = products.get(product.id());
    if (price == null) {
      return Double.POSITIVE_INFINITY;
    }
    Concentration c = product.find(ingredient.id()).orElseThrow().concentration();
    Unit unit = c.isLiquid() ? Unit.LITRE : Unit.KILOGRAM;
    return price.per().dimension() == unit.dimension()
        ? price.dollarsPer(unit) * c.productPerHa(1)
        : Double.POSITIVE_INFINITY;
  }

  /** Cost of a dose on one acre, to the nearest cent; empty without a price. */
  public Optional<Money> perAcre(Dose dose) {
    Price price = products.get(dose.product().id());
    if (price == null || price.per().dimension() == Dimension.AREA) {
      return Optional.ofNullable(price).map(p -> Money.ofDollars(p.dollars()));
    }
    double amount = dose.rate().in(price.per(), Unit.ACRE).amount();
    return Optional.of(Money.ofDollars(amount * price.dollars()));
  }

  /** Cost of all doses of a mix on one acre; empty when one has no price. */
  public Optional<Money> perAcre(Mix mix) {
    Money sum = Money.ZERO;
    for (Dose d : mix.doses()) {
      Optional<Money> m = perAcre(d);
      if (m.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.plus(m.get());
    }
    return Optional.of(sum);
  }
}
