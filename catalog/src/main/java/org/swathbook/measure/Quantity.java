package org.swathbook.measure;

/** A value with its unit, kept as written. Compares in SI, only inside one dimension. */
public record Quantity(double value, Unit unit) implements Comparable<Quantity> {

  /**
   * Relative slack below which a value counts as exactly at a limit. A value at a limit is legal.
   */
  public static final double AT_LIMIT = 1e-9;

  public Quantity {
    if (!Double.isFinite(value)) {
      throw new MeasureException("a quantity must be a finite number, not " + value);
    }
  }

  /** Value in another unit of the same dimension. */
  public double in(Unit other) {
    if (other == unit) {
      return value;
    }
    if (other.dimension() != unit.dimension()) {
      throw new MeasureException(
          "cannot convert "
              + unit.symbol()
              + " to "
              + other.symbol()
              + "; they measure different things");
    }
    return other.fromSi(unit.toSi(value));
  }

  public double si() {
    return unit.toSi(value);
  }

  /** Whether this is above the limit by more than rounding. */
  public boolean exceeds(Quantity limit) {
    return exceeds(si(), siOf(limit));
  }

  /** Whether x is above the limit past a relative 1e-9. */
  public static boolean exceeds(double x, double limit) {
    return x > limit + AT_LIMIT * Math.max(Math.abs(x), Math.abs(limit));
  }

  @Override
  public int compareTo(Quantity other) {
    return Double.compare(si(), siOf(other));
  }

  /** Both sides meet in SI, so that an order does not depend on which of them asks. */
  private double siOf(Quantity other) {
    if (other.unit.dimension() != unit.dimension()) {
      throw new MeasureException(
          "cannot compare "
              + unit.symbol()
              + " with "
              + other.unit.symbol()
              + "; they measure different things");
    }
    return other.si();
  }

  @Override
  public String toString() {
    return Numbers.plain(value) + (unit == Unit.PERCENT ? " %" : " " + unit.symbol());
  }

  /** Reads {@code 4 in}, {@code 0.5 in}, {@code 48 F}, {@code 95 %}. */
  public static Quantity parse(String text) {
    Numbers.Split split = Numbers.split(text);
    return new Quantity(split.number(), Numbers.unit(split.rest(), text));
  }

  private static String message(MeasureException e) {
    return String.valueOf(e.getMessage());
  }

  /** Reads a quantity of one dimension; the example is shown when it is not. */
  public static Quantity parse(String text, Dimension dimension, String example) {
    Quantity q;
    try {
      q = parse(text);
    } catch (MeasureException e) {
      throw new MeasureException(
          e.getMessage()
              + (message(e).contains("; ") ? ", as '" : "; write for example '")
              + example
              + "'");
    }
    if (q.unit().dimension() != dimension) {
      throw new MeasureException(
          "'" + text + "' has the wrong kind of unit; write for example '" + example + "'");
    }
    return q;
  }
}
