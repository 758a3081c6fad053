package org.swathbook.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import org.swathbook.book.Field;

/**
 * The planned dates among which the planner chooses: every house step from 30 days before planting
 * to 66 days after it, and planting itself with the 1st and 3rd day after it, on which windows of
 * soil actives end.
 */
final class DateGrid {
  /**
   * First and last day around planting: earliest preplant residuals, and past the canopy of wide
   * rows.
   */
  private static final int FIRST_DAY = -30;

  private static final int LAST_DAY = 66;

  private final List<Integer> days;
  private final LocalDate planting;

  DateGrid(Field field, int stepDays) {
    planting = field.plantDate();
    TreeSet<Integer> all = new TreeSet<>(List.of(0, 1, 3));
    for (int d = -stepDays; d >= FIRST_DAY; d -= stepDays) {
      all.add(d);
    }
    for (int d = stepDays; d <= LAST_DAY; d += stepDays) {
      all.add(d);
    }
    days = List.copyOf(all);
  }

  int size() {
    return days.size();
  }

  /** Days from planting of a place on the grid. */
  int daysFromPlanting(int place) {
    return days.get(place);
  }

  LocalDate date(int place) {
    return planting.plusDays(days.get(place));
  }

  /** Place of a day; the nearest at or before it, at least 0. */
  int placeOf(int daysFromPlanting) {
    int place = 0;
    while (place + 1 < days.size() && days.get(place + 1) <= daysFromPlanting) {
      place++;
    }
    return place;
  }
}
