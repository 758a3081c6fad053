package org.swathbook.growth;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.weather.SoilTemperature;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * The weeks that stated lengths of soil actives are for, of all years of a station: what of them is
 * the same on every soil. Water alone is followed anew for each.
 */
final class ReferenceWeeks {
  private final String station;
  private final List<WeatherDay> days;

  /** First day of the weeks by year, and fT on their days one after the other. */
  private final int[] from;

  private final double[] warmth;

  ReferenceWeeks(StationWeather station) {
    this.station = station.id();
    this.days = station.days();
    LocalDate first = days.get(0).date();
    this.from =
        station.scenarioYears().stream()
            .mapToInt(y -> (int) (LocalDate.of(y, 5, 10).toEpochDay() - first.toEpochDay()))
            .toArray();
    this.warmth = new double[from.length * SoilAge.REFERENCE_DAYS];
    SoilTemperature model = new SoilTemperature(SoilTemperature.Parameters.BARE);
    SoilTemperature.State soil = model.before(days.get(0));
    int next = 0;
    int n = 0;
    for (int begin : from) {
      for (; next < begin + SoilAge.REFERENCE_DAYS; next++) {
        soil = model.integrate(soil, model.rates(soil, days.get(next)));
        if (next >= begin) {
          warmth[n++] = SoilAge.temperatureFactor(soil.meanC());
        }
      }
    }
  }

  /** fRef: the mean of fT · fW over these weeks on one soil. */
  double meanActivity(Topsoil topsoil) {
    double sum = 0;
    int n = 0;
    int next = 0;
    Topsoil.Water water = topsoil.before();
    for (int begin : from) {
      next = lastSoaking(next, begin, topsoil);
      for (; next < begin + SoilAge.REFERENCE_DAYS; next++) {
        water = topsoil.after(water, days.get(next));
        if (next >= begin) {
          sum += SoilAge.activity(warmth[n++], water.relative());
        }
      }
    }
    if (!(sum > 0)) {
      throw new IllegalArgumentException(
          "station "
              + station
              + " has no day above freezing from 10 May to 20 June in any full year");
    }
    return sum / n;
  }

  /**
   * The last day up to the weeks whose rain fills the layer however dry it was: what was before it
   * is forgotten to the last bit and need not be followed.
   *
   * @return {@code next} where there is none from it on
   */
  private int lastSoaking(int next, int begin, Topsoil topsoil) {
    for (int d = begin; d > next; d--) {
      if (topsoil.isSoakedBy(days.get(d))) {
        return d;
      }
    }
    return next;
  }
}
