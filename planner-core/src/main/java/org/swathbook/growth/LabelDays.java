package org.swathbook.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TimePoint;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.Window;

/**
 * The timing of a use in one weather year, as days. 'Through V8' lasts until the day before V9 is
 * reached, 'before R1' until the day before R1 is reached.
 *
 * @param first first day inside; below 0 when open
 * @param last last day inside; may lie before the first
 * @param unknown what would be needed to say more
 */
record LabelDays(int first, int last, List<String> unknown) {

  LabelDays {
    unknown = List.copyOf(unknown);
  }

  boolean contains(int day) {
    return day >= first && day <= last;
  }

  static LabelDays of(Use use, SeasonTrace trace) {
    Stated<Window> timing = use.timing();
    return timing.match(
        (window, source) -> of(window, trace),
        source -> new LabelDays(Integer.MIN_VALUE, Integer.MAX_VALUE, List.of()),
        what -> new LabelDays(Integer.MIN_VALUE, Integer.MAX_VALUE, List.of(what)));
  }

  private static LabelDays of(Window window, SeasonTrace trace) {
    List<String> unknown = new ArrayList<>();
    int first =
        resolve(window.from(), trace, unknown, s -> trace.dayOfStage(s)).orElse(Integer.MIN_VALUE);
    int through =
        resolve(window.to(), trace, unknown, s -> dayAfterStage(trace, s) - 1)
            .orElse(Integer.MAX_VALUE);
    OptionalInt before = resolve(window.before(), trace, unknown, s -> trace.dayOfStage(s));
    int last = before.isPresent() ? Math.min(through, before.getAsInt() - 1) : through;
    return new LabelDays(first, last, unknown);
  }

  /** Day on which the stage after this one is reached. */
  private static int dayAfterStage(SeasonTrace trace, int stage) {
    return stage + 1 < trace.crop().stages().size() ? trace.dayOfStage(stage + 1) : trace.days();
  }

  private static OptionalInt resolve(
      Optional<TimePoint> point,
      SeasonTrace trace,
      List<String> unknown,
      ToIntFunction<Integer> dayOfStage) {
    if (point.isEmpty()) {
      return OptionalInt.empty();
    }
    TimePoint p = point.get();
    if (p instanceof TimePoint.FromPlanting from) {
      return OptionalInt.of(trace.plantingDay() + from.days());
    }
    if (p instanceof TimePoint.BeforeHarvest before) {
      return OptionalInt.of(trace.harvestDay() - before.days());
    }
    if (p instanceof TimePoint.OnMonthDay on) {
      return OptionalInt.of(
          (int) (on.day().atYear(trace.year()).toEpochDay() - trace.dateOf(0).toEpochDay()));
    }
    String name = ((TimePoint.AtStage) p).stage();
    OptionalInt stage = trace.crop().findStage(name);
    if (stage.isEmpty()) {
      unknown.add("day on which " + trace.crop().name() + " reaches " + name);
      return OptionalInt.empty();
    }
    return OptionalInt.of(dayOfStage.applyAsInt(stage.getAsInt()));
  }
}
