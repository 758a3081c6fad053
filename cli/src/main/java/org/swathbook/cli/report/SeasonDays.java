package org.swathbook.cli.report;

import java.time.LocalDate;

/** Days of a walked year as dates. Day 0 is 1 September before the season. */
public final class SeasonDays {
  private SeasonDays() {}

  /** The date in the weather year itself. */
  public static LocalDate date(int weatherYear, int day) {
    return LocalDate.of(weatherYear - 1, 9, 1).plusDays(day);
  }

  /** The same month and day in the season of the book. */
  public static LocalDate inSeason(int season, int weatherYear, int day) {
    return date(weatherYear, day).plusYears((long) season - weatherYear);
  }
}
