package org.swathbook.catalog;

/** How a day's degree-days are counted. A parameter means nothing without its method. */
public enum DegreeDayMethod {
  /** Mean of the day's extremes less the base, at least 0. */
  AVERAGE,
  /** Extremes clamped into base and ceiling first (86/50 °F for corn and sorghum). */
  CLAMPED,
  /** Single sine with a horizontal cut-off (Baskerville and Emin 1969). */
  SINGLE_SINE
}
