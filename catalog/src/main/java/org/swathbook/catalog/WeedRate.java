package org.swathbook.catalog;

import java.util.OptionalDouble;
import java.util.Set;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;

/**
 * The least of an active that a use allows on some weeds, where that differs from the low end of
 * its range.
 *
 * @param upToCm the tallest plants for which it holds; empty for any height
 */
public record WeedRate(Set<WeedId> weeds, OptionalDouble upToCm, Rate least) {

  public WeedRate {
    weeds = Ordered.set(weeds);
  }

  /** Whether it speaks of plants of this weed that are so tall. */
  public boolean isFor(WeedId weed, double heightCm) {
    return weeds.contains(weed)
        && (upToCm.isEmpty() || !Quantity.exceeds(heightCm, upToCm.getAsDouble()));
  }
}
