package org.swathbook.check;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayWeather;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Severity;
import org.swathbook.weather.HourlyForecast;
import org.swathbook.weather.SunTimes;

/**
 * Hours of the next days in which no rule of the day blocks or warns, by the forecast alone. Crop
 * and weeds are those of the job's own day. An hour of which the forecast, or the field's place,
 * does not say what a rule asks for is not open.
 *
 * @param spans from the first open minute to the hour that is shut again
 * @param notKnown what is not said of hours that might be open else
 */
public record OpenHours(List<Span> spans, List<String> notKnown) {
  private static final int DAYS = 3;
  private static final int LAST_MINUTE = 59;

  /**
   * Weather of which everything that a forecast can say is said; days that are over it may lack. So
   * cool a day asks for them, and what is asked here is not asked of the forecast.
   */
  private static final SprayWeather ALL_SAID =
      new SprayWeather(
          OptionalDouble.of(6),
          OptionalDouble.of(8),
          OptionalDouble.of(0),
          OptionalDouble.of(65),
          OptionalDouble.of(65),
          OptionalDouble.of(60),
          OptionalDouble.of(60),
          Optional.empty(),
          OptionalDouble.of(240),
          OptionalDouble.empty(),
          OptionalDouble.of(0),
          OptionalDouble.of(0),
          OptionalDouble.of(0),
          OptionalDouble.empty(),
          OptionalDouble.of(60),
          true);

  private static final Optional<SunTimes> ANY_SUN =
      Optional.of(new SunTimes(LocalTime.of(6, 0), LocalTime.of(20, 0)));

  /** From a time to a time. */
  public record Span(LocalDateTime from, LocalDateTime to) {}

  public OpenHours {
    spans = List.copyOf(spans);
    notKnown = List.copyOf(notKnown);
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
    List<Span> spans = new ArrayList<>();
    SortedSet<String> notKnown = new TreeSet<>();
    for (HourlyForecast.Hour h : forecast.hours()) {
      LocalDateTime next = h.time().plusHours(1);
      LocalDateTime start = h.time().isBefore(from) ? from : h.time();
      if (next.isAfter(from)
          && start.isBefore(end)
          && isOpen(judged, forecast, start, h.time().plusMinutes(LAST_MINUTE), sun, notKnown)) {
        add(spans, new Span(start, next));
      }
    }
    return new OpenHours(spans, List.copyOf(notKnown));
  }

  private static void add(List<Span> spans, Span span) {
    Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
    if (last != null && last.to().equals(span.from())) {
      spans.set(spans.size() - 1, new Span(last.from(), span.to()));
    } else {
      spans.add(span);
    }
  }

  /** Both ends of the hour must be open: rain or dusk may come inside it. */
  private static boolean isOpen(
      JudgedMix judged,
      HourlyForecast forecast,
      LocalDateTime start,
      LocalDateTime last,
      Function<LocalDate, Optional<SunTimes>> sun,
      SortedSet<String> notKnown) {
    Set<String> missing = new TreeSet<>();
    for (LocalDateTime t : List.of(start, start.isAfter(last) ? start : last)) {
      SprayJob then = judged.job().on(t.toLocalDate(), t.toLocalTime());
      Findings findings =
          MixJudge.dayFindings(
              judged.facts(),
              then.with(ForecastWeather.at(t, forecast)),
              sun.apply(t.toLocalDate()));
      if (findings.count(Severity.BLOCK) + findings.count(Severity.WARN) > 0) {
        return false;
      }
      missing.addAll(asks(findings));
      missing.removeAll(asks(MixJudge.dayFindings(judged.facts(), then.with(ALL_SAID), ANY_SUN)));
    }
    notKnown.addAll(missing);
    return missing.isEmpty();
  }

  private static Set<String> asks(Findings findings) {
    return findings.sortedAsks().stream().map(Ask::what).collect(Collectors.toSet());
  }
}
