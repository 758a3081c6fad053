package org.swathbook.measure;

/** An amount of money in whole cents. */
public record Money(long cents) implements Comparable<Money> {

  public static final Money ZERO = new Money(0);

  /** Nearest cent of an amount in dollars, half a cent up. */
  public static Money ofDollars(double dollars) {
    return new Money(Math.round(dollars * 100));
  }

  public Money plus(Money other) {
    return new Money(Math.addExact(cents, other.cents));
  }

  public Money minus(Money other) {
    return new Money(Math.subtractExact(cents, other.cents));
  }

  public double dollars() {
    return cents / 100.0;
  }

  @Override
  public int compareTo(Money other) {
    return Long.compare(cents, other.cents);
  }

  /** {@code 24.05}, {@code -3.10}. */
  @Override
  public String toString() {
    long abs = Math.abs(cents);
    return (cents < 0 ? "-" : "") + abs / 100 + "." + (abs % 100 < 10 ? "0" : "") + abs % 100;
  }
}
