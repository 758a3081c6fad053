package org.swathbook.cli;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Amounts typed as the value of an option: above zero, and of a size that such a thing has. */
final class TypedNumber {
  private static final double LEAST = 0.001;
  private static final double MOST = 1_000_000;

  private TypedNumber() {}

  /**
   * What is wrong with an amount; empty when nothing is, or when none was typed.
   *
   * @param example a value that would be right
   */
  static Optional<String> wrong(String option, @Nullable Double value, String example) {
    if (value == null || (value >= LEAST && value <= MOST)) {
      return Optional.empty();
    }
    return Optional.of(
        value > 0 && Double.isFinite(value)
            ? option + " is out of all measure; write a number from 0.001 to 1000000, as " + example
            : option + " must be above zero, as " + example);
  }
}
