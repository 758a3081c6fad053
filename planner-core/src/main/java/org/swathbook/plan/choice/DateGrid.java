package org.swathbook.plan.choice;

import java.time.LocalDate;
import java.util.SortedSet;
import java.util.TreeSet;
import org.swathbook.book.Field;

/**
 * The planned dates among which the planner chooses: every day from 30 days before planting to 66
 * days after it. New passes begin on days of their own; a pass then moves by house steps, and by
 * single days to settle.
 */
public final class DateGrid {
  /**
   * First and last day around planting: earliest preplant residuals, and past the canopy of wide
   * rows.
   */
  private static final int FIRST_DAY = -30;

  private static final int LAST_DAY = 66;

  private static final int NEAR_STEPS = 4;

  private final LocalDate planting;
  private final int stepDays;

  public DateGrid(Field field, int stepDays) {
    this.planting = field.plantDate();
    this.stepDays = stepDays;
  }

  public int size() {
    return LAST_DAY - FIRST_DAY + 1;
  }

  /** Days from planting of a place on the grid. */
  public int daysFromPlanting(int place) {
    return FIRST_DAY + place;
  }

  public LocalDate date(int place) {
    return planting.plusDays(daysFromPlanting(place));
  }

  /** Place of a day on the grid; days outside it fall on its ends. */
  public int placeOf(int daysFromPlanting) {
    return Math.max(FIRST_DAY, Math.min(LAST_DAY, daysFromPlanting)) - FIRST_DAY;
  }

  /** First place that is not before a day; {@link #size()} when all are. */
  public int firstFrom(LocalDate day) {
    int place = 0;
    while (place < size() && date(place).isBefore(day)) {
      place++;
    }
    return place;
  }

  /**
   * Places to which a pass may move at once: one and two days, and one to four house steps, either
   * way.
   */
  public SortedSet<Integer> near(int place) {
    return near(place, NEAR_STEPS);
  }

  /** As {@link #near(int)}, by up to so many house steps; the place itself may lie off the grid. */
  public SortedSet<Integer> near(int place, int steps) {
    SortedSet<Integer> out = new TreeSet<>();
    add(place, 1, out);
    add(place, 2, out);
    for (int i = 1; i <= steps; i++) {
      add(place, i * stepDays, out);
    }
    return out;
  }

  private void add(int place, int shift, SortedSet<Integer> out) {
    for (int to : new int[] {place - shift, place + shift}) {
      if (to >= 0 && to < size()) {
        out.add(to);
      }
    }
  }
}
