package org.swathbook.cli.html;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Days of a calendar across a picture.
 *
 * @param left where the first day begins, CSS pixels
 * @param right where the last one stands
 */
record DaysAcross(LocalDate from, LocalDate to, double left, double right) {

  /** Where a day stands; one before or after the calendar stands at its end. */
  double x(LocalDate date) {
    double days = ChronoUnit.DAYS.between(from, date);
    double all = ChronoUnit.DAYS.between(from, to);
    return left + (right - left) * Math.min(1, Math.max(0, days / all));
  }

  boolean shows(LocalDate date) {
    return !date.isBefore(from) && !date.isAfter(to);
  }
}
