package org.swathbook.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;

/**
 * An amount in the measures by which people pour and weigh: {@code 9 gal 1 qt 1 pt}, {@code 11 lb 6
 * oz weight}.
 *
 * @param exact as reckoned
 * @param units so many hundredths of a fluid ounce, or of an ounce by weight, as rounded to what a
 *     jug or a scale shows
 */
public record PouredAmount(Quantity exact, long units) {

  /** Which way an amount is rounded to a measure. */
  public enum Toward {
    /** Never above what was reckoned: a product at its highest rate stays legal. */
    LESS,
    /** Never below it: an adjuvant is asked for at its rate at least. */
    MORE
  }

  private static final long OUNCE = 100;

  /** Larger measures in hundredths of an ounce. */
  private enum Measure {
    GALLON("gal", 128 * OUNCE),
    QUART("qt", 32 * OUNCE),
    PINT("pt", 16 * OUNCE),
    POUND("lb", 16 * OUNCE);

    private final String symbol;
    private final long units;

    Measure(String symbol, long units) {
      this.symbol = symbol;
      this.units = units;
    }
  }

  private static final List<Measure> LIQUID = List.of(Measure.GALLON, Measure.QUART, Measure.PINT);
  private static final List<Measure> DRY = List.of(Measure.POUND);

  /**
   * Rounded to whole ounces from a gallon or ten pounds on, to tenths from a tenth of that on, else
   * to hundredths: less than one part in a hundred.
   */
  public static PouredAmount of(Quantity amount, Toward toward) {
    double ounces = amount.in(ounce(amount));
    boolean liquid = isLiquid(amount);
    double much = liquid ? 128 : 160;
    long step = ounces >= much ? OUNCE : ounces >= much / 10 ? OUNCE / 10 : 1;
    double steps = ounces * OUNCE / step;
    // What is a whole number of steps but for rounding of the arithmetic stays that number.
    double near = Math.rint(steps);
    double whole =
        Math.abs(steps - near) <= Quantity.AT_LIMIT * near
            ? near
            : toward == Toward.LESS ? Math.floor(steps) : Math.ceil(steps);
    return new PouredAmount(amount, ((long) whole) * step);
  }

  private static Unit ounce(Quantity amount) {
    return isLiquid(amount) ? Unit.FLUID_OUNCE : Unit.OUNCE_WEIGHT;
  }

  private static boolean isLiquid(Quantity amount) {
    return amount.unit().dimension() == Dimension.VOLUME;
  }

  public boolean isLiquid() {
    return isLiquid(exact);
  }

  /** As rounded, in fluid ounces or ounces by weight. */
  public Quantity rounded() {
    return new Quantity(units / (double) OUNCE, ounce(exact));
  }

  /** {@code 9 gal 1 qt 1 pt}; the largest measures first, none that is zero. */
  public String words() {
    return words(units);
  }

  private String words(long of) {
    List<String> parts = new ArrayList<>();
    long left = of;
    for (Measure m : isLiquid() ? LIQUID : DRY) {
      if (left >= m.units) {
        parts.add(left / m.units + " " + m.symbol);
        left %= m.units;
      }
    }
    if (left > 0 || parts.isEmpty()) {
      parts.add(Numbers.decimals(left / (double) OUNCE, 2) + " " + ounce(exact).symbol());
    }
    return String.join(" ", parts);
  }

  /**
   * {@code 3 jugs of 2.5 gal and 1 gal 3 qt 1 pt}; empty when it is less than one of them or the
   * package is of another kind of measure.
   */
  public Optional<String> inPackages(Quantity packageSize) {
    if (packageSize.unit().dimension() != exact.unit().dimension()) {
      return Optional.empty();
    }
    long size = Math.round(packageSize.in(ounce(exact)) * OUNCE);
    if (size <= 0 || units < size) {
      return Optional.empty();
    }
    long full = units / size;
    long rest = units % size;
    String one = isLiquid() ? "jug" : "package";
    return Optional.of(
        full
            + " "
            + one
            + (full == 1 ? "" : "s")
            + " of "
            + packageSize
            + (rest > 0 ? " and " + words(rest) : ""));
  }
}
