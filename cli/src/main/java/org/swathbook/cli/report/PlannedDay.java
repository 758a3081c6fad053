package org.swathbook.cli.report;

import java.time.temporal.ChronoUnit;
import org.swathbook.book.Field;
import org.swathbook.season.outcome.PassOutcome;

/** Where the planned date of a pass lies; its spray days in the years lie at or after it. */
public final class PlannedDay {
  private PlannedDay() {}

  /** Days from planting to the planned date, negative before planting. */
  public static int afterPlanting(Field field, PassOutcome pass) {
    return (int) ChronoUnit.DAYS.between(field.plantDate(), pass.planned());
  }
}
