package org.swathbook.growth;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.swathbook.weather.WeatherDay;

/**
 * A soil through one weather year, day by day: nothing that grows in it feeds back on it, so it
 * goes ahead of the weeds, and is the same for all fields that have these days and this soil.
 */
final class SoilCourse {
  private final OutdoorDay[] open;

  /** Each made when first asked for; two threads may both make one, of the same figures. */
  private final @Nullable OutdoorDay[] underCanopy;

  private final double[] age;

  private SoilCourse(int days) {
    this.open = new OutdoorDay[days];
    this.underCanopy = new OutdoorDay[days];
    this.age = new double[days];
  }

  /**
   * Every day, rates are taken from the states of the evening before and the weather of the day,
   * and only then are the states moved on. The topsoil alone goes ahead of what ages in it: its
   * mean temperature of a day is, by its equation, already that of this day.
   */
  static SoilCourse of(List<WeatherDay> days, Topsoil topsoil, SoilAge age) {
    SoilCourse out = new SoilCourse(days.size());
    Topsoil.State soil = topsoil.before(days.get(0));
    SoilAge.State aged = age.before();
    for (int d = 0; d < out.age.length; d++) {
      WeatherDay weather = days.get(d);
      soil = topsoil.integrate(soil, topsoil.rates(soil, weather));
      OutdoorDay today =
          new OutdoorDay(
              d,
              weather,
              RainClock.rainMm(days, d),
              soil.temperature().meanC(),
              topsoil.relativeWater(soil),
              false);
      aged = age.integrate(aged, age.rates(today.soilC(), today.relativeWater()));
      out.open[d] = today;
      out.age[d] = aged.days();
    }
    return out;
  }

  int days() {
    return age.length;
  }

  /** What a day brings to what grows in it. */
  OutdoorDay on(int day, boolean canopyClosed) {
    if (!canopyClosed) {
      return open[day];
    }
    OutdoorDay closed = underCanopy[day];
    if (closed == null) {
      closed = open[day].underCanopy();
      underCanopy[day] = closed;
    }
    return closed;
  }

  /** Stated-length days to the end of a day. */
  double age(int day) {
    return age[day];
  }
}
