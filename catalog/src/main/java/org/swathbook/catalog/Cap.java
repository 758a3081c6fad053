package org.swathbook.catalog;

import org.swathbook.measure.Rate;

/** The most of an active that a period may bring. */
public record Cap(Rate amount, CapPeriod per) {

  /** Over what time a cap counts. */
  public enum CapPeriod {
    SEASON("season"),
    CALENDAR_YEAR("calendar year"),
    CROP_YEAR("crop year"),
    TWELVE_MONTHS("12 months");

    private final String spelling;

    CapPeriod(String spelling) {
      this.spelling = spelling;
    }

    public String spelling() {
      return spelling;
    }
  }
}
