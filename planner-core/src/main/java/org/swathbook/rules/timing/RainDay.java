package org.swathbook.rules.timing;

import org.swathbook.growth.SeasonTrace;
import org.swathbook.measure.Quantity;

/** The day by which so much rain and irrigation has fallen after a spraying. */
final class RainDay {
  private RainDay() {}

  /** The spraying day itself for no rain; {@link SeasonTrace#days()} when it never comes. */
  static int of(SeasonTrace trace, int sprayed, double mm) {
    double sum = 0;
    int day = sprayed;
    while (day < trace.days() && Quantity.exceeds(mm, sum)) {
      day++;
      sum += day < trace.days() ? trace.rainMm(day) : 0;
    }
    return day;
  }
}
