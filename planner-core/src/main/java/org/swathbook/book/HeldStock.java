package org.swathbook.book;

import java.time.LocalDate;
import java.util.Optional;
import org.swathbook.catalog.ProductId;
import org.swathbook.measure.Quantity;

/**
 * An amount of a product that somebody has already.
 *
 * @param grower whose it is, and on whose fields alone it is used; empty for the warehouse, which
 *     serves everybody
 * @param amount of a liquid by volume, of a dry product by weight
 * @param goodUntil last day on which it may be sprayed; empty when nobody wrote one
 */
public record HeldStock(
    ProductId product, Optional<String> grower, Quantity amount, Optional<LocalDate> goodUntil) {

  /** Whether it may still go out on a day. */
  public boolean isGoodOn(LocalDate day) {
    return goodUntil.isEmpty() || !day.isAfter(goodUntil.get());
  }
}
