package org.swathbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reading and printing of plain decimal numbers, the same in every locale. */
public final class Numbers {
  private static final Pattern LEADING =
      Pattern.compile("^\\s*([-+]?(?:\\d+(?:\\.\\d+)?|\\.\\d+))\\s*(.*?)\\s*$", Pattern.DOTALL);
  private static final Pattern RANGE =
      Pattern.compile(
          "^\\s*(\\d+(?:\\.\\d+)?|\\.\\d+)\\s*(?:-|–|to)\\s*(\\d+(?:\\.\\d+)?|\\.\\d+)\\s*(.*?)\\s*$",
          Pattern.DOTALL);

  private static final Pattern COMMA = Pattern.compile("\\d,\\d");
  private static final Pattern SECOND_NUMBER = Pattern.compile("(?:-|–|to)\\s*\\.?\\d");

  /** No quantity of this trade comes near; what does is a slip, and sums of it would run over. */
  public static final double MOST = 1e9;

  private Numbers() {}

  /** A leading number and what follows it. */
  public record Split(double number, String rest) {}

  /** Two numbers (equal when only one is written) and what follows. */
  public record SplitRange(double low, double high, String rest) {}

  public static Split split(String text) {
    Matcher m = LEADING.matcher(text);
    if (!m.matches()) {
      throw new MeasureException("'" + text.strip() + "' does not start with a number");
    }
    return new Split(number(m.group(1), text), m.group(2));
  }

  public static SplitRange splitRange(String text) {
    Matcher m = RANGE.matcher(text);
    if (m.matches()) {
      double low = number(m.group(1), text);
      double high = number(m.group(2), text);
      if (low > high) {
        throw new MeasureException(
            "the range '" + text.strip() + "' runs downwards; write the lower value first");
      }
      return new SplitRange(low, high, m.group(3));
    }
    Split s = split(text);
    return new SplitRange(s.number(), s.number(), s.rest());
  }

  private static double number(String digits, String whole) {
    double value = Double.parseDouble(digits);
    if (Math.abs(value) > MOST) {
      throw new MeasureException(
          "'" + whole.strip() + "' has too large a number; write one up to " + plain(MOST));
    }
    return value;
  }

  /** Shortest plain decimal of a value, at most six decimals, no exponent, no trailing zeros. */
  public static String plain(double value) {
    return decimals(value, 6);
  }

  /** Rounded half up to at most so many decimals, trailing zeros dropped. */
  public static String decimals(double value, int most) {
    BigDecimal d = new BigDecimal(value).setScale(most, RoundingMode.HALF_UP).stripTrailingZeros();
    if (d.scale() < 0) {
      d = d.setScale(0);
    }
    return d.signum() == 0 ? "0" : d.toPlainString();
  }

  /** Rounded half up to exactly so many decimals. */
  public static String fixed(double value, int decimals) {
    String s = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    return s.startsWith("-") && s.chars().noneMatch(c -> c >= '1' && c <= '9') ? s.substring(1) : s;
  }

  static Unit unit(String spelling, String whole) {
    if (spelling.isEmpty()) {
      throw new MeasureException("'" + whole.strip() + "' has no unit");
    }
    if (spelling.equalsIgnoreCase("oz")) {
      throw new MeasureException("'" + whole.strip() + "' says oz; write 'fl oz' or 'oz weight'");
    }
    return Unit.find(spelling).orElseThrow(() -> noUnit(spelling, whole.strip()));
  }

  private static MeasureException noUnit(String spelling, String whole) {
    if (COMMA.matcher(whole).find()) {
      return new MeasureException(
          "'" + whole + "' has a comma in a number; write a decimal point, and no other sign");
    }
    if (SECOND_NUMBER.matcher(spelling).lookingAt()) {
      return new MeasureException("'" + whole + "' is a range; one value is wanted here");
    }
    return new MeasureException("'" + spelling + "' in '" + whole + "' is no known unit");
  }

  /** Whether a comma stands between digits, as thousands or decimals are written elsewhere. */
  public static boolean hasComma(String text) {
    return COMMA.matcher(text).find();
  }
}
