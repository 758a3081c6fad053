package org.swathbook.growth;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.weather.WeatherDay;

/**
 * Heat of the days of one weather year, and what it makes ready to come up: the same on every field
 * that has these days, whatever its soil and crop. Each is computed when first asked for; several
 * threads may ask.
 */
final class SeasonHeat {
  private final List<WeatherDay> days;
  private final Map<ThermalClock, ByDay> byClock = new ConcurrentHashMap<>();
  private final Map<Emergence, Ready> ready = new ConcurrentHashMap<>();

  /** A figure of each day. */
  static final class ByDay {
    private final double[] values;

    private ByDay(double[] values) {
      this.values = values;
    }

    double on(int day) {
      return values[day];
    }
  }

  /**
   * A weed's emergence by heat alone.
   *
   * @param startDay day from which heat counts
   * @param share that is ready by the end of a day where the heat of every day counts
   */
  record Ready(EmergenceCurve curve, int startDay, ByDay share) {}

  SeasonHeat(List<WeatherDay> days) {
    this.days = List.copyOf(days);
  }

  List<WeatherDay> days() {
    return days;
  }

  /** °C-days of each day. */
  ByDay of(ThermalClock clock) {
    return byClock.computeIfAbsent(
        clock, c -> new ByDay(days.stream().mapToDouble(day -> ThermalTime.of(c, day)).toArray()));
  }

  Ready ready(Emergence emergence) {
    return ready.computeIfAbsent(emergence, this::makeReady);
  }

  private Ready makeReady(Emergence emergence) {
    EmergenceCurve curve = new EmergenceCurve(emergence);
    ByDay heat = of(emergence.clock());
    int start = startDay(emergence.start());
    double[] share = new double[days.size()];
    double sum = 0;
    for (int d = Math.max(0, start); d < share.length; d++) {
      sum += heat.on(d);
      share[d] = curve.at(sum);
    }
    return new Ready(curve, start, new ByDay(share));
  }

  /** Starts from September on belong to the autumn before the season. */
  private int startDay(MonthDay start) {
    LocalDate first = days.get(0).date();
    LocalDate date = start.atYear(first.getYear());
    if (date.isBefore(first)) {
      date = start.atYear(first.getYear() + 1);
    }
    return (int) (date.toEpochDay() - first.toEpochDay());
  }
}
