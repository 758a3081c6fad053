package org.swathbook.weather;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Which weather years owe too much to filling. Left out is a year, from 1 September to 31 October
 * of the next, with
 *
 * <ul>
 *   <li>a gap too long for a straight line on any day from 1 March to 31 October: crop and weeds
 *       would grow in a mean spring that never was;
 *   <li>more than {@value #MOST_FILLED_DAYS} days on which anything is missing;
 *   <li>no rain record on more than {@value #MOST_RAIN_DAYS} days in a row: most layers need their
 *       rain within about a week;
 *   <li>a long gap, even in winter, on days that no other year has.
 * </ul>
 */
final class YearGaps {
  static final int MOST_FILLED_DAYS = 15;
  static final int MOST_RAIN_DAYS = 5;

  private final List<Day> days;
  private final LocalDate first;
  private final boolean[] longRainGap;

  /** What is missing of a day; all false for one that is all there. */
  record Day(
      LocalDate date, boolean temperature, boolean longGap, boolean groundless, boolean rain) {}

  /**
   * @param days without a gap, in order
   */
  YearGaps(List<Day> days) {
    this.days = days;
    this.first = days.get(0).date();
    this.longRainGap = new boolean[days.size()];
    int run = 0;
    for (int d = 0; d < longRainGap.length; d++) {
      run = days.get(d).rain() ? run + 1 : 0;
      if (run > MOST_RAIN_DAYS) {
        // Of a run that was long already, all but its last day are marked.
        Arrays.fill(longRainGap, d - MOST_RAIN_DAYS, d + 1, true);
      }
    }
  }

  /** Years that the record spans from end to end and that are left out, with why. */
  SortedMap<Integer, String> leftOut() {
    SortedMap<Integer, String> out = new TreeMap<>();
    int last = days.get(days.size() - 1).date().getYear();
    for (int year = first.getYear() + 1; year <= last; year++) {
      int from = index(LocalDate.of(year - 1, 9, 1));
      int to = index(LocalDate.of(year, 10, 31));
      if (from >= 0 && to < days.size()) {
        Optional<String> why = why(from, index(LocalDate.of(year, 3, 1)), to);
        if (why.isPresent()) {
          out.put(year, why.get());
        }
      }
    }
    return out;
  }

  /** Whether the day is one of too many in a row without a record of rain. */
  boolean isInLongRainGap(int day) {
    return longRainGap[day];
  }

  private Optional<String> why(int from, int march, int to) {
    int missing = 0;
    for (int d = from; d <= to; d++) {
      Day day = days.get(d);
      if (day.groundless() || day.longGap() && d >= march) {
        return Optional.of(runAround(d, Day::temperature).words("temperature"));
      }
      missing += day.temperature() || day.rain() ? 1 : 0;
    }
    for (int d = from; d <= to; d++) {
      if (isInLongRainGap(d)) {
        return Optional.of(runAround(d, Day::rain).words("rain record"));
      }
    }
    return missing > MOST_FILLED_DAYS
        ? Optional.of(missing + " days with something missing")
        : Optional.empty();
  }

  private record Run(LocalDate from, int days) {
    String words(String what) {
      return "no " + what + " on " + days + " days in a row from " + from;
    }
  }

  private Run runAround(int day, Predicate<Day> missing) {
    int from = day;
    while (from > 0 && missing.test(days.get(from - 1))) {
      from--;
    }
    int end = day;
    while (end < days.size() && missing.test(days.get(end))) {
      end++;
    }
    return new Run(days.get(from).date(), end - from);
  }

  private int index(LocalDate date) {
    return (int) (date.toEpochDay() - first.toEpochDay());
  }
}
