package org.swathbook.book.file;

import java.time.LocalDate;
import java.util.Optional;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.Mark;
import org.swathbook.source.ProblemsException;
import org.swathbook.source.Texts;

/**
 * Dates of a season, which runs from 1 September to 31 October of the next year.
 *
 * @param season the year of the harvest; empty when the book does not say, and then every date fits
 */
public record SeasonDates(Optional<Integer> season) {

  LocalDate inSeason(String text) {
    LocalDate date = Texts.date(text);
    if (season.isPresent() && !contains(season.get(), date)) {
      throw new MeasureException(
          "'" + text + "' is not in the season " + season.get() + "; " + rule(season.get()));
    }
    return date;
  }

  /**
   * @param mark where the date was written
   * @throws ProblemsException when the date is not in the season
   */
  public static void check(int season, LocalDate date, Mark mark) {
    if (!contains(season, date)) {
      throw ProblemsException.of(mark, date + " is not in the season " + season, rule(season));
    }
  }

  static boolean contains(int season, LocalDate date) {
    return !date.isBefore(LocalDate.of(season - 1, 9, 1))
        && !date.isAfter(LocalDate.of(season, 10, 31));
  }

  static String rule(int season) {
    return "write a date from " + (season - 1) + "-09-01 to " + season + "-10-31";
  }
}
