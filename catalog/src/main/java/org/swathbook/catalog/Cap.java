package org.swathbook.catalog;

import java.util.Set;
import org.swathbook.measure.Rate;

/**
 * The most of an active that a period may bring.
 *
 * @param counts positions whose applications alone count; empty when all do
 */
public record Cap(Rate amount, CapPeriod per, Set<Position> counts) {

  /** Over what time a cap counts. */
  public enum CapPeriod {
    SEASON("season"),
    CALENDAR_YEAR("calendar year"),
    CROP_YEAR("crop year"),
    TWELVE_MONTHS("12 months"),
    /** This calendar year and the one before: a use of every other year. */
    TWO_CALENDAR_YEARS("two calendar years");

    private final String spelling;

    CapPeriod(String spelling) {
      this.spelling = spelling;
    }

    public String spelling() {
      return spelling;
    }
  }

  public Cap {
    counts = Ordered.set(counts);
  }

  /** Whether an application in these positions counts. */
  public boolean counts(Set<Position> positions) {
    return counts.isEmpty() || positions.stream().anyMatch(counts::contains);
  }
}
