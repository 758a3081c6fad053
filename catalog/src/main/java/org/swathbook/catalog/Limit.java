package org.swathbook.catalog;

import java.util.OptionalDouble;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;

/**
 * An allowed interval of a number: from a least to a most value, each end in or out. A value
 * exactly at an inclusive end is allowed (within rounding); 'before 12 in' refuses 12.
 */
public record Limit(
    OptionalDouble least, boolean leastExcluded, OptionalDouble most, boolean mostExcluded) {

  public static Limit atMost(double most) {
    return new Limit(OptionalDouble.empty(), false, OptionalDouble.of(most), false);
  }

  public static Limit below(double most) {
    return new Limit(OptionalDouble.empty(), false, OptionalDouble.of(most), true);
  }

  public static Limit atLeast(double least) {
    return new Limit(OptionalDouble.of(least), false, OptionalDouble.empty(), false);
  }

  public static Limit above(double least) {
    return new Limit(OptionalDouble.of(least), true, OptionalDouble.empty(), false);
  }

  public boolean allows(double x) {
    boolean lowOk =
        least.isEmpty()
            || (leastExcluded
                ? Quantity.exceeds(x, least.getAsDouble())
                : !Quantity.exceeds(least.getAsDouble(), x));
    boolean highOk =
        most.isEmpty()
            || (mostExcluded
                ? Quantity.exceeds(most.getAsDouble(), x)
                : !Quantity.exceeds(x, most.getAsDouble()));
    return lowOk && highOk;
  }

  @Override
  public String toString() {
    String low =
        least.isPresent()
            ? (leastExcluded ? "above " : "from ") + Numbers.plain(least.getAsDouble())
            : "";
    String high =
        most.isPresent()
            ? (mostExcluded ? "before " : "to ") + Numbers.plain(most.getAsDouble())
            : "";
    return (low + " " + high).strip();
  }
}
