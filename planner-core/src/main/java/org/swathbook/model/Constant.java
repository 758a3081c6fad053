package org.swathbook.model;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A number of a model.
 *
 * @param unit empty for a pure number
 */
public record Constant(String name, double value, String unit) {
  private static final MathContext DIGITS = new MathContext(10);

  /** {@code Ea 45000 J/mol}. */
  public String text() {
    String number = new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    return name + " " + number + (unit.isEmpty() ? "" : " " + unit);
  }
}
