package org.swathbook.growth;

import java.util.List;
import org.swathbook.weather.SoilTemperature;
import org.swathbook.weather.WeatherDay;

/** What the days of a weather year bring to every bare soil, whatever its texture and latitude. */
final class GroundDays {
  private final List<WeatherDay> days;
  private final double[] rainMm;
  private final double[] rainOfTenDaysMm;
  private final double[] warmth;

  GroundDays(List<WeatherDay> days) {
    this.days = List.copyOf(days);
    this.rainMm = new double[days.size()];
    this.rainOfTenDaysMm = new double[days.size()];
    this.warmth = new double[days.size()];
    SoilTemperature model = new SoilTemperature(SoilTemperature.Parameters.BARE);
    SoilTemperature.State soil = model.before(days.get(0));
    for (int d = 0; d < warmth.length; d++) {
      rainMm[d] = days.get(d).rainMm();
      soil = model.integrate(soil, model.rates(soil, days.get(d)));
      warmth[d] = SoilAge.temperatureFactor(soil.meanC());
      rainOfTenDaysMm[d] = RainClock.rainMm(days, d);
    }
  }

  List<WeatherDay> days() {
    return days;
  }

  /** Rain of each day; not to be written to. */
  double[] rainMm() {
    return rainMm;
  }

  /** Of a day and the nine before it, mm. */
  double rainOfTenDaysMm(int day) {
    return rainOfTenDaysMm[day];
  }

  /** fT of {@link SoilAge}. */
  double warmth(int day) {
    return warmth[day];
  }
}
