package org.swathbook.catalog.file;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.swathbook.measure.Period;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.RateRange;
import org.swathbook.measure.Unit;

/**
 * Texts of numbers and quantities that read back to the very same double. The catalog keeps most
 * quantities in one unit; where the unit that labels use gives the same double it is written in
 * that, else in the unit that is kept.
 */
final class ExactText {
  private static final int MOST_DIGITS = 17;
  private static final int NEIGHBORS = 8;

  /** Decimals of a number that somebody wrote by hand. */
  private static final int HANDY = 3;

  private ExactText() {}

  /** The shortest plain decimal that reads as this number. */
  static String number(double value) {
    if (value == 0) {
      return Double.compare(value, 0) < 0 ? "-0" : "0";
    }
    BigDecimal shortest = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    return shortest.toPlainString();
  }

  /** {@code 4 in}, {@code 10.3 cm}: a quantity that is kept in a unit, in that or a nicer one. */
  static String quantity(double value, Unit kept, Unit... nicer) {
    Quantity quantity = new Quantity(value, kept);
    for (Unit unit : nicer) {
      OptionalDouble written = handy(v -> new Quantity(v, unit).in(kept), quantity.in(unit), value);
      if (written.isPresent()) {
        return number(written.getAsDouble()) + " " + unit.symbol();
      }
    }
    return number(value) + " " + kept.symbol();
  }

  /** {@code 95 %} of a share of 0.95. */
  static String share(double share) {
    return percent(Unit.PERCENT::toSi, share * 100, share);
  }

  /** {@code 30 %} of a percentage of 30, which is read as a share and multiplied. */
  static String percentage(double percent) {
    return percent(p -> Unit.PERCENT.toSi(p) * 100, percent, percent);
  }

  private static String percent(DoubleUnaryOperator reading, double guess, double wanted) {
    return number(inverse(reading, guess, wanted).orElse(guess)) + " %";
  }

  /** {@code 0.25 lb ai/acre}, as it was written. */
  static String rate(Rate rate) {
    return number(rate.amount()) + " " + rate.unitText();
  }

  /** {@code 0.25-0.5 lb ai/acre}, or one rate for both ends. */
  static String range(RateRange range) {
    Rate low = range.low();
    if (!low.unitText().equals(range.high().unitText())) {
      throw new IllegalArgumentException(
          "the ends " + low + " and " + range.high() + " have different units");
    }
    return low.amount() == range.high().amount()
        ? rate(low)
        : number(low.amount()) + "-" + rate(range.high());
  }

  /** {@code 4.5 months} or {@code 28 days}; days beside months are thirtieths of one. */
  static String period(Period period) {
    if (period.months() == 0) {
      return period.days() + " days";
    }
    // The last day of a month is rounded up to from just below the next one.
    double months = period.months() + Math.min(period.days(), 29.7) / 30;
    for (int decimals = 0; decimals < MOST_DIGITS; decimals++) {
      String text =
          BigDecimal.valueOf(months)
                  .setScale(decimals, RoundingMode.HALF_UP)
                  .stripTrailingZeros()
                  .toPlainString()
              + " months";
      if (Period.parse(text).equals(period)) {
        return text;
      }
    }
    throw new IllegalArgumentException(period + " cannot be said in months of 30 days");
  }

  /** A number of few decimals that reads as the wanted one. */
  static OptionalDouble handy(DoubleUnaryOperator reading, double guess, double wanted) {
    for (int decimals = 0; decimals <= HANDY; decimals++) {
      double v = BigDecimal.valueOf(guess).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
      if (same(reading.applyAsDouble(v), wanted)) {
        return OptionalDouble.of(v);
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * The number with the fewest digits that reads as the wanted one; empty when no number near the
   * guess does, which happens to none that was read.
   */
  static OptionalDouble inverse(DoubleUnaryOperator reading, double guess, double wanted) {
    for (int digits = 1; digits <= MOST_DIGITS; digits++) {
      double v =
          BigDecimal.valueOf(guess)
              .round(new MathContext(digits, RoundingMode.HALF_UP))
              .doubleValue();
      if (same(reading.applyAsDouble(v), wanted)) {
        return OptionalDouble.of(v);
      }
    }
    double below = guess;
    double above = guess;
    for (int i = 0; i < NEIGHBORS; i++) {
      below = Math.nextDown(below);
      above = Math.nextUp(above);
      if (same(reading.applyAsDouble(below), wanted)) {
        return OptionalDouble.of(below);
      }
      if (same(reading.applyAsDouble(above), wanted)) {
        return OptionalDouble.of(above);
      }
    }
    return OptionalDouble.empty();
  }

  private static boolean same(double a, double b) {
    return Double.compare(a, b) == 0;
  }
}
