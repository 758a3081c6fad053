package org.swathbook.measure;

/** Dollars for one unit: {@code 24.00 $/gal}, {@code 4.35 $/bu}, {@code 9.00 $/acre}. */
public record Price(double dollars, Unit per) {
  /** Dollars for one unit that are taken as written; costs are sums of whole cents. */
  public static final double MOST = 100_000;

  public Price {
    if (!(dollars >= 0) || Double.isInfinite(dollars)) {
      throw new MeasureException("a price must be zero or more, not " + dollars);
    }
  }

  /** Dollars for one of another unit of the same dimension. */
  public double dollarsPer(Unit unit) {
    return dollars * new Quantity(1, unit).in(per);
  }

  public static Price parse(String text) {
    Numbers.Split s = Numbers.split(text);
    if (!s.rest().startsWith("$/")) {
      throw new MeasureException(
          "'" + text.strip() + "' is no price; write for example '24.00 $/gal'");
    }
    if (s.number() > MOST) {
      throw new MeasureException(
          "'"
              + text.strip()
              + "' is more than "
              + Numbers.plain(MOST)
              + " $; check it and its unit");
    }
    return new Price(s.number(), Numbers.unit(s.rest().substring(2).strip(), text));
  }

  @Override
  public String toString() {
    return Numbers.fixed(dollars, 2) + " $/" + per.symbol();
  }
}
