package org.swathbook.book.file;

import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;

/** What a station measures, with the bounds of what any instrument has met. */
enum Reading {
  /** Highest temperature, °C. */
  TMAX(-90, 60),
  /** Lowest temperature, °C. */
  TMIN(-90, 60),
  /** Rain, mm. */
  RAIN(0, 2000),
  /** Mean wind, m/s. */
  WIND(0, 110);

  private final double least;
  private final double most;

  Reading(double least, double most) {
    this.least = least;
    this.most = most;
  }

  /**
   * The value, when it can be true.
   *
   * @param text as it stands in the file
   */
  double check(double value, String text) {
    if (value < least || value > most) {
      throw new MeasureException(
          "'"
              + text
              + "' is beyond what was ever measured ("
              + Numbers.plain(least)
              + " to "
              + Numbers.plain(most)
              + (this == RAIN ? " mm" : this == WIND ? " m/s" : " °C")
              + "); download the file again, or leave the value out");
    }
    return value;
  }
}
