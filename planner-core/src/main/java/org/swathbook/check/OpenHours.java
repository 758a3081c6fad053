package org.swathbook.check;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Severity;
import org.swathbook.weather.HourlyForecast;
import org.swathbook.weather.SunTimes;

/**
 * Hours of the next days in which no rule of the day blocks or warns, by the forecast alone. Crop
 * and weeds are those of the job's own day.
 *
 * @param spans from the first open minute to the hour that is shut again
 */
public record OpenHours(List<Span> spans) {
  private static final int DAYS = 3;

  /** From a time to a time. */
  public record Span(LocalDateTime from, LocalDateTime to) {}

  public OpenHours {
    spans = List.copyOf(spans);
  }

  /**
   * @param sun sunrise and sunset of a day at the field
   */
  public static OpenHours of(
      JudgedMix judged, HourlyForecast forecast, Function<LocalDate, Optional<SunTimes>> sun) {
    SprayJob job = judged.job();
    LocalDateTime from =
        job.time().map(t -> job.date().atTime(t)).orElse(job.date().atStartOfDay());
    LocalDateTime end = from.plusDays(DAYS);
    List<Span> out = new ArrayList<>();
    for (HourlyForecast.Hour h : forecast.hours()) {
      LocalDateTime time = h.time();
      if (time.plusHours(1).isAfter(from)
          && time.isBefore(end)
          && isOpen(judged, forecast, time, sun)) {
        Span last = out.isEmpty() ? null : out.get(out.size() - 1);
        if (last != null && last.to().equals(time)) {
          out.set(out.size() - 1, new Span(last.from(), time.plusHours(1)));
        } else {
          out.add(new Span(time, time.plusHours(1)));
        }
      }
    }
    return new OpenHours(out);
  }

  private static boolean isOpen(
      JudgedMix judged,
      HourlyForecast forecast,
      LocalDateTime time,
      Function<LocalDate, Optional<SunTimes>> sun) {
    // Both ends of the hour must be open: rain or dusk may come inside it.
    for (LocalDateTime t : List.of(time, time.plusMinutes(59))) {
      SprayJob then =
          judged.job().on(t.toLocalDate(), t.toLocalTime()).with(ForecastWeather.at(t, forecast));
      Findings findings = MixJudge.dayFindings(judged.facts(), then, sun.apply(t.toLocalDate()));
      if (then.weather().windMph().isEmpty()
          || findings.count(Severity.BLOCK) + findings.count(Severity.WARN) > 0) {
        return false;
      }
    }
    return true;
  }
}
