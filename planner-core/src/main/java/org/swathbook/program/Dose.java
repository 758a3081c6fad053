package org.swathbook.program;

import java.util.List;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Rate;

/**
 * A product at a rate with the actives that it brings.
 *
 * @param rate product rate as it was written, or in the units in which the product is spoken: an
 *     amount by itself says nothing without both units of the rate
 * @param named the ingredient alone was named: cost, order and formulation come from this product,
 *     its cheapest single
 */
public record Dose(Product product, Rate rate, List<ActiveDose> actives, boolean named) {

  public Dose {
    actives = List.copyOf(actives);
    if (actives.isEmpty()) {
      throw new IllegalArgumentException("a dose brings at least one active");
    }
  }
}
