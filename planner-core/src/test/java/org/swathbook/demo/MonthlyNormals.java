package org.swathbook.demo;

import java.time.LocalDate;
import java.util.List;

/**
 * Invented monthly means of one station, in the manner of south-central Nebraska: lists of twelve,
 * January first. They are nobody's published normals.
 *
 * @param tmaxC mean daily maximum, °C
 * @param tminC mean daily minimum, °C
 * @param rainMm rain of the month, mm
 * @param wetDays days of the month with rain
 * @param sdC standard deviation of the daily mean temperature around its normal, °C
 */
record MonthlyNormals(
    List<Double> tmaxC,
    List<Double> tminC,
    List<Double> rainMm,
    List<Double> wetDays,
    List<Double> sdC) {

  double meanC(LocalDate day) {
    return (at(tmaxC, day) + at(tminC, day)) / 2;
  }

  double rangeC(LocalDate day) {
    return at(tmaxC, day) - at(tminC, day);
  }

  double spreadC(LocalDate day) {
    return at(sdC, day);
  }

  /** Share of days with rain, by calendar month. */
  double wetShare(LocalDate day) {
    return wetDays.get(day.getMonthValue() - 1) / day.lengthOfMonth();
  }

  /** Mean rain of a day that has any, mm, by calendar month. */
  double rainPerWetDayMm(LocalDate day) {
    int month = day.getMonthValue() - 1;
    return rainMm.get(month) / wetDays.get(month);
  }

  /** Straight lines between mid-months keep the files free of steps at month ends. */
  private static double at(List<Double> monthly, LocalDate day) {
    double position = day.getMonthValue() - 1 + (day.getDayOfMonth() - 0.5) / day.lengthOfMonth();
    double fromMiddle = position - 0.5;
    int before = (int) Math.floor(fromMiddle);
    double weight = fromMiddle - before;
    double left = monthly.get(Math.floorMod(before, 12));
    double right = monthly.get(Math.floorMod(before + 1, 12));
    return left + weight * (right - left);
  }
}
