package org.swathbook.rules;

import java.util.Optional;
import org.swathbook.book.Field;
import org.swathbook.book.SoilRates;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Use;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.program.Doses;

/**
 * The least and the most of a product that a use allows on the soils of a field, both in whole
 * steps of what can be measured out.
 */
public record PracticalRange(Rate low, Rate high) {

  /**
   * Empty where the soil refuses the use, is not known, or leaves no whole step.
   *
   * @param single a product of one active
   */
  public static Optional<PracticalRange> of(Product single, Use use, Field field) {
    if (!(SoilRates.of(use, field) instanceof SoilRates.Allowed a)) {
      return Optional.empty();
    }
    Rate low = Say.practicalAtLeast(single, Doses.productRate(single, a.range().low()));
    Rate high = Say.practical(single, Doses.productRate(single, a.range().high()));
    return high.amount() > 0 && !Quantity.exceeds(low.amount(), high.amount())
        ? Optional.of(new PracticalRange(low, high))
        : Optional.empty();
  }
}
