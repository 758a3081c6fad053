package org.swathbook.measure;

import java.time.LocalDate;

/** A waiting time of calendar months and days: 4.5 months are four calendar months and 15 days. */
public record Period(int months, int days) {

  public static final Period NONE = new Period(0, 0);

  private static final int MOST = 10_000;

  /** A wait that no time ends, only a test, such as a field bioassay. */
  public static final Period NEVER = new Period(MOST, 0);

  /** First day on which the waiting time after the date is over: application day is day 0. */
  public LocalDate after(LocalDate date) {
    return date.plusMonths(months).plusDays(days);
  }

  /** Rough length for ordering two periods: months of 30.44 days. */
  public double roughDays() {
    return months * 30.44 + days;
  }

  /** Reads {@code 28 days}, {@code 4 months}, {@code 4.5 months}; of a range the long end. */
  public static Period parse(String text) {
    Numbers.SplitRange s = Numbers.splitRange(text);
    String unit = s.rest();
    double n = s.high();
    if (n < 0 || n >= MOST) {
      throw new MeasureException(
          "'" + text.strip() + "' is no waiting time; write one from 0 to below " + MOST);
    }
    if (unit.equals("months") || unit.equals("month")) {
      int whole = (int) Math.floor(n);
      return new Period(whole, (int) Math.round((n - whole) * 30));
    }
    if ((unit.equals("days") || unit.equals("day")) && n == Math.rint(n)) {
      return new Period(0, (int) n);
    }
    throw new MeasureException(
        "'" + text.strip() + "' is no waiting time; write for example '28 days' or '4 months'");
  }

  @Override
  public String toString() {
    if (equals(NEVER)) {
      return "a field bioassay";
    }
    if (months == 0) {
      return days == 1 ? "1 day" : days + " days";
    }
    String m = months == 1 ? "1 month" : months + " months";
    return days == 0 ? m : m + " " + (days == 1 ? "1 day" : days + " days");
  }
}
