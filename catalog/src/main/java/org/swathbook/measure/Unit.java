package org.swathbook.measure;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A unit with its factor to the SI unit of its dimension (m, kg, L, m², day, °C, m/s, fraction).
 *
 * <p>Factors: NIST Handbook 44, Appendix C. A bushel is a unit of trade of its own (its mass
 * depends on the grain) and converts to nothing else.
 */
public enum Unit {
  MILLIMETRE("mm", Dimension.LENGTH, 1, 1000),
  CENTIMETRE("cm", Dimension.LENGTH, 1, 100),
  METRE("m", Dimension.LENGTH, 1, 1),
  INCH("in", Dimension.LENGTH, 0.0254, 1, "inch", "inches"),
  FOOT("ft", Dimension.LENGTH, 0.3048, 1, "feet", "foot"),

  GRAM("g", Dimension.MASS, 1, 1000),
  KILOGRAM("kg", Dimension.MASS, 1, 1),
  POUND("lb", Dimension.MASS, 0.45359237, 1, "lbs", "pound", "pounds"),
  OUNCE_WEIGHT("oz weight", Dimension.MASS, 0.45359237, 16, "oz wt", "oz. weight"),

  MILLILITRE("mL", Dimension.VOLUME, 1, 1000, "ml"),
  LITRE("L", Dimension.VOLUME, 1, 1, "l"),
  FLUID_OUNCE("fl oz", Dimension.VOLUME, 3.785411784, 128, "floz", "fl. oz"),
  PINT("pt", Dimension.VOLUME, 3.785411784, 8, "pint", "pints"),
  QUART("qt", Dimension.VOLUME, 3.785411784, 4, "quart", "quarts"),
  GALLON("gal", Dimension.VOLUME, 3.785411784, 1, "gallon", "gallons"),

  SQUARE_METRE("m2", Dimension.AREA, 1, 1, "m²"),
  SQUARE_FOOT("ft2", Dimension.AREA, 0.3048 * 0.3048, 1, "ft²", "sq ft"),
  ACRE("acre", Dimension.AREA, 4046.8564224, 1, "acres", "a", "ac"),
  HECTARE("ha", Dimension.AREA, 10000, 1),

  HOUR("h", Dimension.DURATION, 1, 24, "hour", "hours"),
  DAY("days", Dimension.DURATION, 1, 1, "day", "d"),

  FAHRENHEIT("F", Dimension.TEMPERATURE, 5, 9, "°F"),
  CELSIUS("C", Dimension.TEMPERATURE, 1, 1, "°C"),

  MILE_PER_HOUR("mph", Dimension.SPEED, 0.44704, 1),
  METRE_PER_SECOND("m/s", Dimension.SPEED, 1, 1),
  KILOMETRE_PER_HOUR("km/h", Dimension.SPEED, 10, 36),

  PERCENT("%", Dimension.SHARE, 1, 100, "percent"),

  BUSHEL("bu", Dimension.GRAIN, 1, 1, "bushel", "bushels");

  private static final Map<String, Unit> BY_SPELLING = bySpelling();

  private final String symbol;
  private final Dimension dimension;
  private final double multiplier;
  private final double divisor;
  private final String otherSpellings;

  /** Factors below one are kept as divisors, which decimal values survive unchanged. */
  Unit(
      String symbol,
      Dimension dimension,
      double multiplier,
      double divisor,
      String... otherSpellings) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.multiplier = multiplier;
    this.divisor = divisor;
    this.otherSpellings = "|" + String.join("|", otherSpellings) + "|";
  }

  /** The spelling that is printed. */
  public String symbol() {
    return symbol;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** Value in the SI unit of the dimension. */
  public double toSi(double value) {
    return (this == FAHRENHEIT ? value - 32 : value) * multiplier / divisor;
  }

  /** Value in this unit of an SI value. */
  public double fromSi(double si) {
    double value = si * divisor / multiplier;
    return this == FAHRENHEIT ? value + 32 : value;
  }

  /** The same of a difference or a sum of differences, degree-days among them: no zero is moved. */
  public double spanToSi(double span) {
    return span * multiplier / divisor;
  }

  /** A difference in this unit of one in the SI unit. */
  public double spanFromSi(double si) {
    return si * divisor / multiplier;
  }

  /**
   * The unit of this spelling; units are case-insensitive except that none differ by case alone
   * here.
   */
  public static Optional<Unit> find(String spelling) {
    return Optional.ofNullable(BY_SPELLING.get(spelling.strip().toLowerCase(Locale.ROOT)));
  }

  private static Map<String, Unit> bySpelling() {
    Map<String, Unit> out = new HashMap<>();
    for (Unit u : values()) {
      out.putIfAbsent(u.symbol.toLowerCase(Locale.ROOT), u);
      for (String other : u.otherSpellings.split("\\|")) {
        if (!other.isEmpty()) {
          out.putIfAbsent(other, u);
        }
      }
    }
    return Map.copyOf(out);
  }
}
