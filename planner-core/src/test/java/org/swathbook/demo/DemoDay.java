package org.swathbook.demo;

import java.time.LocalDate;

/**
 * One line of a weather file, in whole tenths so that writing it takes no floating-point format.
 *
 * @param trace rain too little to measure, printed T
 */
record DemoDay(
    LocalDate date, long tmaxTenthsC, long tminTenthsC, long rainTenthsMm, boolean trace) {
  static final String HEADER = "date,tmax_c,tmin_c,rain_mm";

  /** Less than this is a trace, mm: 0.01 in is the least a gauge of the region reads. */
  private static final double MEASURABLE_MM = 0.2;

  static DemoDay of(LocalDate date, double tmaxC, double tminC, double rainMm) {
    boolean trace = rainMm > 0 && rainMm < MEASURABLE_MM;
    return new DemoDay(
        date,
        StrictMath.round(tmaxC * 10),
        StrictMath.round(tminC * 10),
        trace ? 0 : StrictMath.round(rainMm * 10),
        trace);
  }

  String line() {
    String rain = trace ? "T" : decimal(rainTenthsMm);
    return date + "," + decimal(tmaxTenthsC) + "," + decimal(tminTenthsC) + "," + rain;
  }

  private static String decimal(long tenths) {
    long size = Math.abs(tenths);
    return (tenths < 0 ? "-" : "") + size / 10 + "." + size % 10;
  }
}
