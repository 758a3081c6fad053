package org.swathbook.growth;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.weather.WeatherDay;

/**
 * How many plants of a weed come up on each day of a weather year.
 *
 * <ul>
 *   <li>Heat alone would bring the daily difference of the emergence curve.
 *   <li>Dry soil holds seedlings back: of all that wait, each day brings the share that the rain of
 *       the last ten days is of 12 mm ({@link RainClock}). They wait; none is lost.
 *   <li>After tillage at planting nothing comes up for 40 °C-days base 10, from the next day on
 *       (default); these wait too and come as a flush.
 *   <li>Under a closed canopy a quarter comes up (default); the rest stays in the ground.
 * </ul>
 *
 * <p>The density of a field is the season's whole emergence without control, so the days of every
 * year are scaled to add up to it, whatever dry soil and canopy kept down: these shift plants
 * between days and make no season emptier. A year in which nothing came up at all stays empty.
 */
final class SeedlingDays {
  private static final ThermalClock TILLAGE_CLOCK =
      new ThermalClock(DegreeDayMethod.AVERAGE, 10, OptionalDouble.empty());
  private static final double QUIET_AFTER_TILLAGE = 40;
  private static final double UNDER_CANOPY = 0.25;

  private SeedlingDays() {}

  /**
   * Plants per m² by day, adding up to the density.
   *
   * @param tilledOn day of tillage; the number of days for none
   */
  static double[] perM2(
      Emergence emergence,
      List<WeatherDay> days,
      CanopyClock canopy,
      int tilledOn,
      double density) {
    EmergenceCurve curve = new EmergenceCurve(emergence);
    double[] out = new double[days.size()];
    double heat = 0;
    double up = 0;
    double waiting = 0;
    double sinceTillage = 0;
    double total = 0;
    for (int d = startDay(emergence.start(), days); d < out.length; d++) {
      heat += ThermalTime.of(emergence.clock(), days.get(d));
      double now = curve.at(heat);
      waiting += now - up;
      up = now;
      if (d > tilledOn) {
        sinceTillage += ThermalTime.of(TILLAGE_CLOCK, days.get(d));
      }
      if (d >= tilledOn && sinceTillage < QUIET_AFTER_TILLAGE) {
        continue;
      }
      double coming = waiting * RainClock.share(rainOfTenDays(days, d), RainClock.SEEDLING_NEED_MM);
      waiting -= coming;
      out[d] = canopy.isClosed(d) ? coming * UNDER_CANOPY : coming;
      total += out[d];
    }
    for (int d = 0; total > 0 && d < out.length; d++) {
      out[d] *= density / total;
    }
    return out;
  }

  /** Starts from September on belong to the autumn before the season. */
  private static int startDay(MonthDay start, List<WeatherDay> days) {
    LocalDate first = days.get(0).date();
    LocalDate date = start.atYear(first.getYear());
    if (date.isBefore(first)) {
      date = start.atYear(first.getYear() + 1);
    }
    return (int) (date.toEpochDay() - first.toEpochDay());
  }

  private static double rainOfTenDays(List<WeatherDay> days, int day) {
    double sum = 0;
    for (int d = Math.max(0, day - RainClock.DAYS + 1); d <= day; d++) {
      sum += days.get(d).rainMm();
    }
    return sum;
  }

  /** First day by which a share of all plants is up; the last day when none came up. */
  static int dayOfShare(double[] perM2, double share) {
    double total = 0;
    for (double n : perM2) {
      total += n;
    }
    double sum = 0;
    for (int d = 0; d < perM2.length; d++) {
      sum += perM2[d];
      if (sum > 0 && sum >= share * total) {
        return d;
      }
    }
    return perM2.length - 1;
  }
}
