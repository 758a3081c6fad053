package org.swathbook.source;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Unit;

/** Readings of a text that quantities do not cover. Each throws {@link MeasureException}. */
public final class Texts {
  private static final Pattern NAMED_DAY = Pattern.compile("([a-z]{3,9})\\.? (\\d{1,2})");
  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

  private Texts() {}

  /** The text itself. */
  public static String text(String text) {
    return text.strip();
  }

  /** {@code yes} or {@code no}; nothing else, not even {@code true}. */
  public static boolean yesNo(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "yes" -> true;
      case "no" -> false;
      default ->
          throw new MeasureException("'" + text + "' is neither yes nor no; write yes or no");
    };
  }

  /** A plain decimal number. */
  public static double number(String text) {
    String t = text.strip();
    if (!isNumber(t)) {
      if (Numbers.hasComma(t)) {
        throw new MeasureException(
            "'" + text + "' has a comma in a number; write a decimal point, and no other sign");
      }
      throw new MeasureException(
          "'" + text + "' is no number; write a number as 12.5, without unit");
    }
    double value = Double.parseDouble(t);
    if (Math.abs(value) > Numbers.MOST) {
      throw new MeasureException(
          "'" + text + "' is too large; write a number up to " + Numbers.plain(Numbers.MOST));
    }
    return value;
  }

  /**
   * A sign or none, digits, and perhaps a point with digits after it. Looked through by hand, like
   * dates: a table of weather has thousands of them, and a pattern takes several times as long.
   */
  private static boolean isNumber(String t) {
    int at = !t.isEmpty() && (t.charAt(0) == '-' || t.charAt(0) == '+') ? 1 : 0;
    int whole = digits(t, at);
    int end = at + whole;
    if (end == t.length()) {
      return whole > 0;
    }
    return t.charAt(end) == '.'
        && digits(t, end + 1) > 0
        && end + 1 + digits(t, end + 1) == t.length();
  }

  /** How many digits stand from a place on. */
  private static int digits(String t, int from) {
    int to = from;
    while (to < t.length() && t.charAt(to) >= '0' && t.charAt(to) <= '9') {
      to++;
    }
    return to - from;
  }

  public static int whole(String text) {
    String t = text.strip();
    int sign = t.startsWith("-") || t.startsWith("+") ? 1 : 0;
    int digits = digits(t, sign);
    if (digits == 0 || digits > 9 || sign + digits < t.length()) {
      throw new MeasureException("'" + text + "' is no whole number; write one as 3");
    }
    return Integer.parseInt(t);
  }

  /** A share written as {@code 95 %}, as a fraction; from 0 to 100 %. */
  public static double share(String text) {
    double share = Quantity.parse(text, Dimension.SHARE, "95 %").si();
    if (share < 0 || share > 1) {
      throw new MeasureException("'" + text + "' is no share; write 0 to 100 %");
    }
    return share;
  }

  /** Days written as {@code 28 days}, a whole number. */
  public static int days(String text) {
    Quantity q = Quantity.parse(text, Dimension.DURATION, "28 days");
    double days = q.in(Unit.DAY);
    if (q.unit() != Unit.DAY || days != Math.rint(days) || days < 0 || days > 100_000) {
      throw new MeasureException(
          "'" + text + "' is no number of days; write for example '28 days'");
    }
    return (int) days;
  }

  /** {@code 14} or {@code 14 days}. */
  public static int bareDays(String text) {
    int days = text.contains("day") ? days(text) : whole(text);
    if (days < 0) {
      throw new MeasureException("'" + text + "' is below zero; write 0 or more days");
    }
    return days;
  }

  /** {@code 2027-05-10}. */
  public static LocalDate date(String text) {
    String t = text.strip();
    try {
      if (t.length() == 10
          && digits(t, 0) == 4
          && t.charAt(4) == '-'
          && digits(t, 5) == 2
          && t.charAt(7) == '-'
          && digits(t, 8) == 2) {
        return LocalDate.of(
            Integer.parseInt(t, 0, 4, 10),
            Integer.parseInt(t, 5, 7, 10),
            Integer.parseInt(t, 8, 10, 10));
      }
    } catch (DateTimeException e) {
      throw new MeasureException("there is no day '" + text + "'; write a day of the calendar");
    }
    throw new MeasureException("'" + text + "' is no date; write year-month-day, as 2027-05-10");
  }

  /** {@code 10:30}, of 24 hours. */
  public static LocalTime time(String text) {
    String t = text.strip();
    int colon = t.indexOf(':');
    if ((colon == 1 || colon == 2)
        && digits(t, 0) == colon
        && t.length() == colon + 3
        && digits(t, colon + 1) == 2) {
      int hour = Integer.parseInt(t.substring(0, colon));
      int minute = Integer.parseInt(t.substring(colon + 1));
      if (hour < 24 && minute < 60) {
        return LocalTime.of(hour, minute);
      }
    }
    throw new MeasureException("'" + text + "' is no time; write hours and minutes, as 14:30");
  }

  /** A day of any year: {@code 06-30} or {@code Jun 30}. */
  public static MonthDay monthDay(String text) {
    String t = text.strip().toLowerCase(Locale.ROOT);
    try {
      if (t.length() == 5 && digits(t, 0) == 2 && t.charAt(2) == '-' && digits(t, 3) == 2) {
        return MonthDay.parse("--" + t);
      }
      var named = NAMED_DAY.matcher(t);
      if (named.matches() && MONTHS.contains(named.group(1).substring(0, 3))) {
        int month = MONTHS.indexOf(named.group(1).substring(0, 3)) + 1;
        return MonthDay.of(month, Integer.parseInt(named.group(2)));
      }
    } catch (DateTimeException e) {
      throw new MeasureException("there is no day '" + text + "'; write a day of the calendar");
    }
    throw new MeasureException("'" + text + "' is no day of the year; write month-day, as 06-30");
  }

  /** One of some words, case counting for nothing. */
  public static TextParser<String> oneOf(Collection<String> words) {
    return text ->
        words.stream()
            .filter(w -> w.equalsIgnoreCase(text.strip()))
            .findFirst()
            .orElseThrow(
                () ->
                    new MeasureException(
                        "'" + text + "' is not known here; " + Nearest.hint(text, words)));
  }

  /** One of some values by its spelling, case counting for nothing. */
  public static <T> TextParser<T> oneOf(T[] values, Function<T, String> spelling) {
    Map<String, T> bySpelling = new LinkedHashMap<>();
    for (T value : values) {
      bySpelling.put(spelling.apply(value), value);
    }
    TextParser<String> word = oneOf(bySpelling.keySet());
    return text -> Objects.requireNonNull(bySpelling.get(word.parse(text)));
  }

  /**
   * A quantity of one dimension in a unit, never negative: {@code quantity(Unit.CENTIMETRE, "4
   * in")}.
   */
  public static TextParser<Double> in(Unit unit, String example) {
    return text -> {
      Quantity q = Quantity.parse(text, unit.dimension(), example);
      if (q.value() < 0 && unit.dimension() != Dimension.TEMPERATURE) {
        throw new MeasureException(
            "'" + text + "' is below zero; write for example '" + example + "'");
      }
      return q.in(unit);
    };
  }
}
