package org.swathbook.check;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.measure.Inches;
import org.swathbook.measure.Unit;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayWeather;
import org.swathbook.weather.HourlyForecast;
import org.swathbook.weather.HourlyForecast.Hour;

/** Weather of a job from an hourly forecast, where the job does not say it itself. */
public final class ForecastWeather {
  private static final int DAY = 24;
  private static final int LONGEST_DAYS = 10;
  private static final int SHORTEST_DAYS = 7;
  private static final int COLD_SPELL_DAYS = 3;

  private ForecastWeather() {}

  /** What the job says stands; a job without a time takes only what its day has. */
  public static SprayJob fill(SprayJob job, HourlyForecast forecast) {
    SprayWeather own = job.weather();
    SprayWeather seen =
        job.time().isPresent()
            ? at(job.date().atTime(job.time().get()), forecast)
            : ofDay(job.date(), forecast);
    return job.with(
        new SprayWeather(
            first(own.windMph(), seen.windMph()),
            first(own.gustMph(), own.windMph().isPresent() ? own.gustMph() : seen.gustMph()),
            first(own.windFromDegrees(), seen.windFromDegrees()),
            first(own.temperatureF(), seen.temperatureF()),
            first(own.highF(), seen.highF()),
            first(own.coldestNightF(), seen.coldestNightF()),
            first(own.humidityPct(), seen.humidityPct()),
            own.inversion(),
            first(own.hoursToRain(), seen.hoursToRain()),
            own.hoursToRain().isPresent() ? OptionalDouble.empty() : seen.dryHours(),
            first(own.rainNext24hIn(), seen.rainNext24hIn()),
            first(own.rainNext48hIn(), seen.rainNext48hIn()),
            first(own.rainNext10dIn(), seen.rainNext10dIn()),
            first(own.meanPast3dF(), seen.meanPast3dF()),
            first(own.meanNext3dF(), seen.meanNext3dF()),
            own.windForecast()
                || own.windMph().isEmpty()
                    && (seen.windMph().isPresent() || seen.gustMph().isPresent())));
  }

  private static OptionalDouble first(OptionalDouble one, OptionalDouble other) {
    return one.isPresent() ? one : other;
  }

  /** The forecast of a time by itself; nobody has seen an inversion. */
  static SprayWeather at(LocalDateTime time, HourlyForecast forecast) {
    Optional<Hour> hour = forecast.at(time);
    return new SprayWeather(
        in(Unit.MILE_PER_HOUR, hour.map(Hour::windMs)),
        in(Unit.MILE_PER_HOUR, hour.map(Hour::gustMs)),
        hour.map(Hour::windFromDegrees).orElse(OptionalDouble.empty()),
        in(Unit.FAHRENHEIT, hour.map(Hour::temperatureC)),
        in(Unit.FAHRENHEIT, Optional.of(forecast.highC(time.toLocalDate()))),
        OptionalDouble.empty(),
        hour.map(Hour::humidityPct).orElse(OptionalDouble.empty()),
        Optional.empty(),
        forecast.hoursToRain(time),
        forecast.hoursToRain(time).isPresent() ? OptionalDouble.empty() : forecast.dryHours(time),
        inches(forecast.rainMm(time, DAY)),
        inches(forecast.rainMm(time, 2 * DAY)),
        rainOfDays(time, forecast),
        meanF(time.toLocalDate().minusDays(COLD_SPELL_DAYS), forecast),
        meanF(time.toLocalDate(), forecast),
        true);
  }

  private static SprayWeather ofDay(LocalDate day, HourlyForecast forecast) {
    SprayWeather noon = at(day.atTime(LocalTime.NOON), forecast);
    return new SprayWeather(
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        noon.highF(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        noon.rainNext10dIn(),
        noon.meanPast3dF(),
        noon.meanNext3dF(),
        false);
  }

  /** Of ten days, or of as many of them as are forecast, down to seven. */
  private static OptionalDouble rainOfDays(LocalDateTime time, HourlyForecast forecast) {
    for (int days = LONGEST_DAYS; days >= SHORTEST_DAYS; days--) {
      OptionalDouble mm = forecast.rainMm(time, days * DAY);
      if (mm.isPresent()) {
        return inches(mm);
      }
    }
    return OptionalDouble.empty();
  }

  /** Mean of three days from one on, each by its extremes; empty when an hour is missing. */
  private static OptionalDouble meanF(LocalDate from, HourlyForecast forecast) {
    double sum = 0;
    for (int i = 0; i < COLD_SPELL_DAYS; i++) {
      OptionalDouble mean = forecast.meanC(from.plusDays(i));
      if (mean.isEmpty()) {
        return mean;
      }
      sum += mean.getAsDouble();
    }
    return OptionalDouble.of(Unit.FAHRENHEIT.fromSi(sum / COLD_SPELL_DAYS));
  }

  private static OptionalDouble in(Unit unit, Optional<OptionalDouble> si) {
    OptionalDouble value = si.orElse(OptionalDouble.empty());
    return value.isPresent()
        ? OptionalDouble.of(unit.fromSi(value.getAsDouble()))
        : OptionalDouble.empty();
  }

  private static OptionalDouble inches(OptionalDouble mm) {
    return mm.isPresent() ? OptionalDouble.of(Inches.ofMm(mm.getAsDouble())) : mm;
  }
}
