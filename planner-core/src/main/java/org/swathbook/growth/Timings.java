package org.swathbook.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Puts a planned date into every weather year. */
public final class Timings {
  private Timings() {}

  /**
   * The first suitable spray day at or after a date of the book's season in every year, and the
   * crop on it. A year without one stands with its last day: stage and height as they then are.
   */
  public static PassTiming at(TraceSet traces, LocalDate planned) {
    return in(traces, planned, trace -> trace.firstSprayDay(trace.dayOf(planned)));
  }

  /**
   * That very day in every year.
   *
   * @throws IllegalArgumentException when it lies outside the season
   */
  public static PassTiming on(TraceSet traces, LocalDate date) {
    return in(
        traces,
        date,
        trace -> {
          int day = trace.dayOf(date);
          if (day < 0 || day >= trace.days()) {
            throw new IllegalArgumentException(date + " lies outside the season of the field");
          }
          return day;
        });
  }

  private static PassTiming in(
      TraceSet traces, LocalDate planned, ToIntFunction<SeasonTrace> dayIn) {
    List<PassTiming.YearDay> years = new ArrayList<>();
    List<LocalDate> dates = new ArrayList<>();
    double[] stages = new double[traces.years().size()];
    double[] heights = new double[stages.length];
    for (int y = 0; y < stages.length; y++) {
      SeasonTrace trace = traces.years().get(y);
      int day = dayIn.applyAsInt(trace);
      int shown = Math.min(day, trace.days() - 1);
      stages[y] = trace.stage(shown);
      heights[y] = trace.cropHeightCm(shown);
      dates.add(trace.bookDateOf(day));
      years.add(new PassTiming.YearDay(trace.year(), day, stages[y], heights[y]));
    }
    return new PassTiming(
        planned, years, Medians.of(dates), Medians.of(stages), Medians.of(heights));
  }
}
