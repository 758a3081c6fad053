package org.swathbook.stress;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.WeatherEdit;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.weather.WeatherDay;

/**
 * Another rain on the days after a pass. They count in every year from the day on which the weather
 * first lets the sprayer out at or after the planned date, also where a label window then forbids
 * the pass. That day and those before it stay as they are, so the pass keeps its day.
 */
final class AfterPass implements WeatherEdit {

  /** The rain of the n-th day after the pass, 1 for the next one. */
  @FunctionalInterface
  interface Rain {
    double mm(int daysAfter, double before);
  }

  private final Map<Integer, Integer> sprayDay = new HashMap<>();
  private final int days;
  private final Rain rain;

  /**
   * @param days how many days after the pass change
   */
  AfterPass(PassOutcome pass, int days, Rain rain) {
    for (PassTiming.YearDay y : pass.timing().years()) {
      sprayDay.put(y.year(), y.day());
    }
    this.days = days;
    this.rain = rain;
  }

  @Override
  public List<WeatherDay> edit(int year, List<WeatherDay> before) {
    List<WeatherDay> out = new ArrayList<>(before);
    int sprayed = sprayDay.getOrDefault(year, before.size());
    for (int n = 1; n <= days && sprayed + n < out.size(); n++) {
      WeatherDay d = before.get(sprayed + n);
      out.set(sprayed + n, d.withRain(rain.mm(n, d.rainMm())));
    }
    return out;
  }
}
