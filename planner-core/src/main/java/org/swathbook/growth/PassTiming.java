package org.swathbook.growth;

import java.time.LocalDate;
import java.util.List;

/**
 * A planned date in every weather year: the first suitable spray day at or after it, with the crop
 * as it then stands.
 *
 * @param planned date in the book's season
 * @param years in the order of the trace set
 * @param medianDate median of the spray days as a date of the book's season (the lower one of two)
 * @param medianStage median running stage number (see {@link SeasonTrace#stage})
 * @param medianHeightCm median crop height
 */
public record PassTiming(
    LocalDate planned,
    List<YearDay> years,
    LocalDate medianDate,
    double medianStage,
    double medianHeightCm) {

  /** One weather year; {@code day} is {@link SeasonTrace#days()} when no suitable day is left. */
  public record YearDay(int year, int day, double stage, double cropHeightCm) {}

  public PassTiming {
    years = List.copyOf(years);
  }
}
