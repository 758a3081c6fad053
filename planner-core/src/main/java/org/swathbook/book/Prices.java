package org.swathbook.book;

import java.util.Map;
import java.util.Optional;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Money;
import org.swathbook.measure.Price;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;

/** What products cost. A product without a price costs nobody knows what. */
public record Prices(Map<ProductId, Price> products) {

  public Prices {
    products = Map.copyOf(products);
  }

  /** Cost of a dose on one acre, to the nearest cent; empty without a price. */
  public Optional<Money> perAcre(Dose dose) {
    Price price = products.get(dose.product().id());
    if (price == null || price.per().dimension() == Dimension.AREA) {
      return Optional.ofNullable(price).map(p -> Money.ofDollars(p.dollars()));
    }
    double amount = dose.rate().in(price.per()).amount();
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
