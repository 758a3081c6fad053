package org.swathbook.trials;

import java.util.OptionalDouble;

/**
 * A row of a table of trial results, as written.
 *
 * @param row number of the row in its table
 * @param trial rows of one trial share it; "same as above" looks here
 * @param low least published control, percent; empty where only a highest is given
 * @param high greatest published control, percent
 */
record TrialRow(
    int row,
    String trial,
    String source,
    String region,
    String crop,
    String weed,
    String biotype,
    String program,
    String treatment,
    String timing,
    String evaluated,
    String days,
    OptionalDouble low,
    OptionalDouble high,
    String qualifier,
    String note) {

  /** Rows that were set aside before anything was calibrated. */
  boolean isHeldOut() {
    return row % 3 == 0;
  }

  boolean isScored() {
    return low.isPresent() || high.isPresent();
  }

  /** Points that a prediction lies outside the published range; 0 inside it. */
  double error(double predictedPct) {
    if (low.isPresent() && predictedPct < low.getAsDouble()) {
      return low.getAsDouble() - predictedPct;
    }
    if (high.isPresent() && predictedPct > high.getAsDouble()) {
      return predictedPct - high.getAsDouble();
    }
    return 0;
  }

  String published() {
    if (low.isPresent() && high.isPresent()) {
      return low.getAsDouble() == high.getAsDouble()
          ? figure(low)
          : figure(low) + "–" + figure(high);
    }
    return low.isPresent()
        ? "at least " + figure(low)
        : high.isPresent() ? "at most " + figure(high) : "no figure";
  }

  private static String figure(OptionalDouble value) {
    return String.valueOf(Math.round(value.getAsDouble()));
  }
}
