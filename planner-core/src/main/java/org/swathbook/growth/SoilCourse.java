package org.swathbook.growth;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.swathbook.weather.WeatherDay;

/**
 * A soil through one weather year, day by day: nothing that grows in it feeds back on it, so it
 * goes ahead of the weeds, and is the same for all fields that have these days and this soil.
 */
final class SoilCourse {
  private final GroundDays ground;

  /** Each made when first asked for; two threads may both make one, of the same figures. */
  private final @Nullable OutdoorDay[] made;

  private final double[] relativeWater;
  private final double[] age;

  private SoilCourse(GroundDays ground) {
    int days = ground.days().size();
    this.ground = ground;
    this.made = new OutdoorDay[days];
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

  int days() {
    return age.length;
  }

  /** What a day brings to the seeds in it. */
  OutdoorDay on(int day) {
    OutdoorDay on = made[day];
    if (on == null) {
      on =
          new OutdoorDay(
              day,
              ground.days().get(day),
              ground.rainOfTenDaysMm(day),
              ground.soilC(day),
              relativeWater[day]);
      made[day] = on;
    }
    return on;
  }

  /** Stated-length days to the end of each day; not to be written to. */
  double[] age() {
    return age;
  }

  /** Of each day; not to be written to. */
  double[] rainMm() {
    return ground.rainMm();
  }
}
