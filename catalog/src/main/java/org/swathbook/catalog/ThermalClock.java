package org.swathbook.catalog;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** A method of counting degree-days with its base and, where it has one, its ceiling, in °C. */
public record ThermalClock(DegreeDayMethod method, double baseC, OptionalDouble ceilingC) {

  // Written out, as in every key that is hashed at a start: see IngredientId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ThermalClock o
        && method == o.method
        && Double.compare(baseC, o.baseC) == 0
        && ceilingC.equals(o.ceilingC);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * method.hashCode() + Double.hashCode(baseC)) + ceilingC.hashCode();
  }
}
