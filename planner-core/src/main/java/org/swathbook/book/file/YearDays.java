package org.swathbook.book.file;

import java.time.LocalDate;
import java.time.Year;
import java.util.Optional;

/** Dates written as a year and a day's number in it. */
final class YearDays {
  private YearDays() {}

  /** The date of a row; a number that the year does not have is a problem. */
  static Optional<LocalDate> date(Row row, String yearColumn, String dayColumn) {
    Optional<Integer> year = row.need(yearColumn, Parsers.whole(1, 9999), "2026");
    Optional<Integer> day =
        year.flatMap(y -> row.need(dayColumn, Parsers.whole(1, Year.of(y).length()), "131"));
    return day.map(d -> LocalDate.ofYearDay(year.orElseThrow(), d));
  }
}
