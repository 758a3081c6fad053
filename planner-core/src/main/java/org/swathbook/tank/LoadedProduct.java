package org.swathbook.tank;

import java.util.Optional;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Quantity;

/**
 * A product as it goes into one load.
 *
 * @param amount in the unit in which its rate is written
 * @param packageSize as it is sold; empty when not known
 */
public record LoadedProduct(Product product, Quantity amount, Optional<Quantity> packageSize) {

  /** As it is measured out, never more than the rate asks for. */
  public PouredAmount poured() {
    return PouredAmount.of(amount, PouredAmount.Toward.LESS);
  }
}
