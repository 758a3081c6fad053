package org.swathbook.book.file;

import java.util.OptionalDouble;
import org.swathbook.measure.MeasureException;
import org.swathbook.source.Texts;

/**
 * Values of the Global Historical Climatology Network, daily: whole tenths of a °C, mm or m/s, with
 * a measurement and a quality flag. Source: the network's readme at NOAA's National Centers for
 * Environmental Information, from memory.
 */
final class GhcnValues {
  private static final double MISSING = -9999;

  private GhcnValues() {}

  /**
   * A value; none when it failed a check of quality. A trace is 0.
   *
   * @param text never blank
   * @param measurement flag, blank for none
   * @param quality flag, blank for a value that passed every check
   */
  static OptionalDouble value(String text, String measurement, String quality) {
    if (text.contains(".")) {
      throw new MeasureException(
          "'"
              + text
              + "' is no whole number, and this layout has tenths; take the file of the station"
              + " itself, not an order with converted units");
    }
    double tenths = Texts.whole(text);
    if (!quality.isBlank() || tenths == MISSING) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(measurement.strip().equals("T") ? 0 : tenths / 10);
  }
}
