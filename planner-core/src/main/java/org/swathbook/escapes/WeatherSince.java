package org.swathbook.escapes;

/**
 * The days between a pass and a look.
 *
 * @param days of the calendar
 * @param known of them that the book's station has a record of
 * @param warm warm growing days that they are worth, a day that is not known taken for one
 */
public record WeatherSince(int days, int known, double warm) {
  /** Below this worth of a day on the mean a spell is called cool: default, ours. */
  private static final double COOL = 0.75;

  /** Whether they were cool enough to hold back what a herbicide does; never where unknown. */
  public boolean isCool() {
    return days > 0 && warm < COOL * days;
  }

  /** Whether they moved the days of the sites. */
  public boolean isSlower() {
    return warm < days - 0.05;
  }
}
