package org.swathbook.catalog;

import java.time.MonthDay;

/** A point in a field's season as a label names it. */
public sealed interface TimePoint {

  /** Name under which every crop knows its emergence stage. */
  String EMERGENCE = "emergence";

  /** So many days from planting; negative before it, 0 the planting day. */
  record FromPlanting(int days) implements TimePoint {
    @Override
    public String toString() {
      return days == 0
          ? "planting"
          : Math.abs(days) + " days " + (days < 0 ? "before" : "after") + " planting";
    }
  }

  /** The day the crop reaches a stage by its name in the crop's list; emergence is one of them. */
  record AtStage(String stage) implements TimePoint {
    @Override
    public String toString() {
      return stage;
    }
  }

  /** So many days before harvest. */
  record BeforeHarvest(int days) implements TimePoint {
    @Override
    public String toString() {
      return days + " days before harvest";
    }
  }

  /** A calendar day of the season's year. */
  record OnMonthDay(MonthDay day) implements TimePoint {
    @Override
    public String toString() {
      return day.toString().substring(2);
    }
  }
}
