package org.swathbook.book;

import java.util.List;

/**
 * How tall scouted plants are, cm: so tall that a tenth of them is no taller, half of them, and
 * nine tenths. All three are equal where one height was written, which is the median.
 */
public record ScoutedHeight(double lowCm, double medianCm, double highCm) {

  public ScoutedHeight {
    if (!(lowCm > 0) || !(lowCm <= medianCm) || !(medianCm <= highCm)) {
      throw new IllegalArgumentException("heights must be above zero and rise");
    }
  }

  /** The middle of a range is its median. */
  public static ScoutedHeight range(double lowCm, double highCm) {
    return new ScoutedHeight(lowCm, lowCm < highCm ? (lowCm + highCm) / 2 : lowCm, highCm);
  }

  /**
   * Plants of which nine in ten are no taller: a tenth of them up to a third of it, half up to two
   * thirds (default, ours).
   */
  public static ScoutedHeight upTo(double highCm) {
    return new ScoutedHeight(highCm / 3, 2 * highCm / 3, highCm);
  }

  public boolean isRange() {
    return lowCm < highCm;
  }

  /**
   * The strictest of several zones: of each of the three the tallest that any zone names. A single
   * height beside ranges speaks for the median, and for the top where it is above theirs.
   */
  public static ScoutedHeight tallest(List<ScoutedHeight> zones) {
    double median = zones.stream().mapToDouble(ScoutedHeight::medianCm).max().orElseThrow();
    double low =
        zones.stream()
            .filter(ScoutedHeight::isRange)
            .mapToDouble(ScoutedHeight::lowCm)
            .max()
            .orElse(median);
    double high = zones.stream().mapToDouble(ScoutedHeight::highCm).max().orElseThrow();
    return new ScoutedHeight(Math.min(low, median), median, high);
  }
}
