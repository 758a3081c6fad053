package org.swathbook.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Reading and printing of plain decimal numbers, the same in every locale. Texts are read by hand:
 * a short command reads a thousand numbers, and would wait longer for patterns than for its answer.
 */
public final class Numbers {
  /** No quantity of this trade comes near; what does is a slip, and sums of it would run over. */
  public static final double MOST = 1e9;

  private Numbers() {}

  /** A leading number and what follows it. */
  public record Split(double number, String rest) {}

  /** Two numbers (equal when only one is written) and what follows. */
  public record SplitRange(double low, double high, String rest) {}

  public static Split split(String text) {
    int from = blanks(text, 0);
    boolean signed = from < text.length() && "+-".indexOf(text.charAt(from)) >= 0;
    int digits = signed ? from + 1 : from;
    int to = digitsEnd(text, digits);
    if (to == digits) {
      throw new MeasureException("'" + text.strip() + "' does not start with a number");
    }
    return new Split(number(text.substring(from, to), text), rest(text, to));
  }

  public static SplitRange splitRange(String text) {
    int low = blanks(text, 0);
    int lowEnd = digitsEnd(text, low);
    int sign = blanks(text, lowEnd);
    int high = blanks(text, signEnd(text, sign));
    int highEnd = digitsEnd(text, high);
    if (lowEnd > low && signEnd(text, sign) > sign && highEnd > high) {
      SplitRange range =
          new SplitRange(
              number(text.substring(low, lowEnd), text),
              number(text.substring(high, highEnd), text),
              rest(text, highEnd));
      if (range.low() > range.high()) {
        throw new MeasureException(
            "the range '" + text.strip() + "' runs downwards; write the lower value first");
      }
      return range;
    }
    Split s = split(text);
    return new SplitRange(s.number(), s.number(), s.rest());
  }

  /** Past digits with or without a decimal point, at least one behind it; the place if none is. */
  private static int digitsEnd(String text, int from) {
    int whole = wholeEnd(text, from);
    if (whole < text.length() && text.charAt(whole) == '.') {
      int parts = wholeEnd(text, whole + 1);
      return parts > whole + 1 ? parts : whole;
    }
    return whole;
  }

  private static int wholeEnd(String text, int from) {
    int to = from;
    while (to < text.length() && isDigit(text.charAt(to))) {
      to++;
    }
    return to;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Past what stands between the two numbers of a range; the place if it is none of these. */
  private static int signEnd(String text, int from) {
    if (text.startsWith("-", from) || text.startsWith("–", from)) {
      return from + 1;
    }
    return text.startsWith("to", from) ? from + 2 : from;
  }

  private static int blanks(String text, int from) {
    int to = from;
    while (to < text.length() && isBlank(text.charAt(to))) {
      to++;
    }
    return to;
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c >= '\t' && c <= '\r';
  }

  private static String rest(String text, int from) {
    int start = blanks(text, from);
    int end = text.length();
    while (end > start && isBlank(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(start, end);
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

  /** The same with a comma between thousands, as people read large numbers: {@code 1,204.5}. */
  public static String grouped(double value, int most) {
    return grouped(decimals(value, most));
  }

  /** A printed decimal number with a comma between its thousands. */
  public static String grouped(String number) {
    int point = number.indexOf('.');
    StringBuilder out = new StringBuilder(number);
    int first = number.startsWith("-") ? 1 : 0;
    for (int i = (point < 0 ? number.length() : point) - 3; i > first; i -= 3) {
      out.insert(i, ',');
    }
    return out.toString();
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
    if (hasComma(whole)) {
      return new MeasureException(
          "'" + whole + "' has a comma in a number; write a decimal point, and no other sign");
    }
    int second = blanks(spelling, signEnd(spelling, 0));
    if (signEnd(spelling, 0) > 0 && digitsEnd(spelling, second) > second) {
      return new MeasureException("'" + whole + "' is a range; one value is wanted here");
    }
    return new MeasureException("'" + spelling + "' in '" + whole + "' is no known unit");
  }

  /** Whether a comma stands between digits, as thousands or decimals are written elsewhere. */
  public static boolean hasComma(String text) {
    for (int i = 1; i + 1 < text.length(); i++) {
      if (text.charAt(i) == ',' && isDigit(text.charAt(i - 1)) && isDigit(text.charAt(i + 1))) {
        return true;
      }
    }
    return false;
  }
}
