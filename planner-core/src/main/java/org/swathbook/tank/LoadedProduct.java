package org.swathbook.tank;

import java.util.Optional;
import java.util.OptionalDouble;
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

  /**
   * Acres that one package does at this rate; empty when its size is not known or is of another
   * kind of measure.
   *
   * @param acres that this amount goes on
   */
  public OptionalDouble acresPerPackage(double acres) {
    return packageSize
        .filter(p -> p.unit().dimension() == amount.unit().dimension() && amount.value() > 0)
        .map(p -> OptionalDouble.of(p.in(amount.unit()) / amount.value() * acres))
        .orElse(OptionalDouble.empty());
  }
}
