package org.swathbook.growth;

import java.util.List;
import org.swathbook.weather.WeatherDay;

/**
 * A soil through one weather year, day by day: nothing that grows in it feeds back on it, so it
 * goes ahead of the weeds, and is the same for all fields that have these days and this soil. What
 * is kept of it can be kept by the very object.
 */
public final class SoilCourse {
  private final GroundDays ground;

  private final double[] relativeWater;
  private final double[] age;

  private SoilCourse(GroundDays ground) {
    int days = ground.days().size();
    this.ground = ground;
    this.relativeWater = new double[days];
    this.age = new double[days];
  }

  static SoilCourse of(List<WeatherDay> days, Topsoil topsoil, SoilAge age) {
    return of(new GroundDays(days), topsoil, age);
  }

  /**
   * Every day, rates are taken from the states of the evening before and the weather of the day,
   * and only then are the states moved on. The topsoil alone goes ahead of what ages in it: its
   * mean temperature of a day is, by its equation, already that of this day.
   */
  static SoilCourse of(GroundDays ground, Topsoil topsoil, SoilAge age) {
    SoilCourse out = new SoilCourse(ground);
    Topsoil.Water water = topsoil.before();
    double days = 0;
    for (int d = 0; d < out.age.length; d++) {
      water = topsoil.after(water, ground.days().get(d));
      days += age.ageing(ground.warmth(d), water.relative());
      out.relativeWater[d] = water.relative();
      out.age[d] = days;
    }
    return out;
  }

  public int days() {
    return age.length;
  }

  /** What a day brings to the seeds in it. */
  OutdoorDay on(int day) {
    // Mostly asked for once: the days of a thousand soils would outlive what is made of them.
    return new OutdoorDay(day, ground.rainOfTenDaysMm(day), relativeWater[day]);
  }

  /** Age in stated-length days that a soil active gains between two days. */
  public double age(int from, int to) {
    return age[to] - age[from];
  }

  /** Rain and irrigation of a day. */
  public double rainMm(int day) {
    return ground.rainMm()[day];
  }

  /**
   * Rain and irrigation of the days after {@code from}, up to and with {@code to}; none is known
   * before day 0.
   */
  public double rainAfter(int from, int to) {
    double[] rainMm = ground.rainMm();
    double sum = 0;
    for (int d = Math.max(0, from + 1); d <= to; d++) {
      sum += rainMm[d];
    }
    return sum;
  }
}
