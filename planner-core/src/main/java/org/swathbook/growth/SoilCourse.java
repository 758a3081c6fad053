package org.swathbook.growth;

import java.util.List;
import org.swathbook.weather.WeatherDay;

/**
 * A soil through one weather year, day by day: nothing that grows in it feeds back on it, so it
 * goes ahead of the weeds, and is the same for all fields that have these days and this soil.
 */
final class SoilCourse {
  private final List<WeatherDay> days;
  private final double[] rainOfTenDaysMm;
  private final double[] meanC;
  private final double[] relativeWater;
  private final double[] age;

  private SoilCourse(List<WeatherDay> days) {
    this.days = days;
    this.rainOfTenDaysMm = new double[days.size()];
    this.meanC = new double[days.size()];
    this.relativeWater = new double[days.size()];
    this.age = new double[days.size()];
  }

  /**
   * Every day, rates are taken from the states of the evening before and the weather of the day,
   * and only then are the states moved on. The topsoil alone goes ahead of what ages in it: its
   * mean temperature of a day is, by its equation, already that of this day.
   */
  static SoilCourse of(List<WeatherDay> days, Topsoil topsoil, SoilAge age) {
    SoilCourse out = new SoilCourse(days);
    Topsoil.State soil = topsoil.before(days.get(0));
    SoilAge.State aged = age.before();
    for (int d = 0; d < days.size(); d++) {
      soil = topsoil.integrate(soil, topsoil.rates(soil, days.get(d)));
      double meanC = soil.temperature().meanC();
      double water = topsoil.relativeWater(soil);
      aged = age.integrate(aged, age.rates(meanC, water));
      out.rainOfTenDaysMm[d] = RainClock.rainMm(days, d);
      out.meanC[d] = meanC;
      out.relativeWater[d] = water;
      out.age[d] = aged.days();
    }
    return out;
  }

  int days() {
    return age.length;
  }

  /** What a day brings to what grows in it. */
  OutdoorDay on(int day, boolean canopyClosed) {
    return new OutdoorDay(
        day, days.get(day), rainOfTenDaysMm[day], meanC[day], relativeWater[day], canopyClosed);
  }

  /** Stated-length days to the end of a day. */
  double age(int day) {
    return age[day];
  }
}
