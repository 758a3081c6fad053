package org.swathbook.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.swathbook.catalog.Position;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.Phases;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;

/** Where in the season a pass belongs, over the weather years. */
public final class PassPositions {
  private PassPositions() {}

  /**
   * @param date that of the day in the book's season
   */
  private record Day(SeasonTrace trace, int day, LocalDate date) {
    static final Comparator<Day> BY_DATE = Comparator.comparing(Day::date);
  }

  /**
   * Positions of the median day among the years of the commonest part of the crop's life; of two
   * equally common ones the later, where more is forbidden.
   */
  public static Set<Position> of(TraceSet traces, PassTiming timing) {
    Map<Position.Phase, List<Day>> days = new EnumMap<>(Position.Phase.class);
    for (int y = 0; y < traces.years().size(); y++) {
      SeasonTrace trace = traces.years().get(y);
      int day = Math.min(timing.years().get(y).day(), trace.days() - 1);
      days.computeIfAbsent(Phases.of(trace, day), p -> new ArrayList<>())
          .add(new Day(trace, day, trace.bookDateOf(day)));
    }
    List<Day> most =
        days.values().stream().reduce((a, b) -> b.size() >= a.size() ? b : a).orElseThrow();
    List<Day> sorted = most.stream().sorted(Day.BY_DATE).toList();
    Day median = sorted.get((sorted.size() - 1) / 2);
    return Phases.positions(median.trace(), median.day());
  }
}
