package org.swathbook.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;

/**
 * Whether a day lies in the window of a use: position, timing and crop height. Stage and height are
 * compared apart; the first limit reached binds. Calendar cut-offs of a state are not judged here.
 */
public final class WindowCheck {
  private WindowCheck() {}

  /**
   * The answer for one day of one weather year.
   *
   * @param inside no known limit is broken; no clearance while something is unknown
   * @param byPosition the day is one of the use's positions
   * @param byStage timing by stage, planting, harvest or calendar allows it
   * @param byHeight crop height allows it
   * @param unknown what is not known and matters on this day, in words
   */
  public record Answer(
      boolean inside, boolean byPosition, boolean byStage, boolean byHeight, List<String> unknown) {

    public Answer {
      unknown = List.copyOf(unknown);
    }
  }

  /** First and last day of a year inside the window, both days of the trace. */
  public record Span(int first, int last) {}

  /** Judges a day of a year as the trace models it; days outside the trace are outside. */
  public static Answer check(Use use, SeasonTrace trace, int day) {
    return check(use, trace, day, LabelDays.of(use, trace));
  }

  private static Answer check(Use use, SeasonTrace trace, int day, LabelDays timing) {
    if (day < 0 || day >= trace.days()) {
      return new Answer(false, false, false, false, List.of());
    }
    boolean byPosition = byPosition(use, trace, day);
    boolean byStage = timing.contains(day);
    boolean byHeight = byHeight(use.cropHeightCm(), trace, day);
    List<String> unknown = new ArrayList<>(timing.unknown());
    // An unknown limit matters over a crop only.
    if (use.cropHeightCm() instanceof Stated.Unknown<Limit> limit
        && Phases.of(trace, day) == Position.Phase.IN_CROP) {
      unknown.add(limit.what());
    }
    return new Answer(byPosition && byStage && byHeight, byPosition, byStage, byHeight, unknown);
  }

  private static boolean byPosition(Use use, SeasonTrace trace, int day) {
    for (Position p : Phases.positions(trace, day)) {
      if (use.positions().contains(p)) {
        return true;
      }
    }
    return false;
  }

  /** A crop that is not up has no height to be limited. */
  private static boolean byHeight(Stated<Limit> limit, SeasonTrace trace, int day) {
    return !(limit instanceof Stated.Value<Limit> allowed)
        || Phases.of(trace, day) != Position.Phase.IN_CROP
        || allowed.value().allows(trace.cropHeightCm(day));
  }

  /** The days of a year that are inside, from the first to the last; empty when there is none. */
  public static Optional<Span> span(Use use, SeasonTrace trace) {
    LabelDays timing = LabelDays.of(use, trace);
    int first = -1;
    int last = -1;
    int end = Math.min(trace.days() - 1, timing.last());
    for (int d = Math.max(0, timing.first()); d <= end; d++) {
      if (byHeight(use.cropHeightCm(), trace, d) && byPosition(use, trace, d)) {
        first = first < 0 ? d : first;
        last = d;
      }
    }
    return first < 0 ? Optional.empty() : Optional.of(new Span(first, last));
  }

  /** Share of the years in which the pass falls inside the window, 0 to 1. */
  public static double shareInside(Use use, TraceSet traces, PassTiming timing) {
    int inside = 0;
    for (int y = 0; y < traces.years().size(); y++) {
      if (check(use, traces.years().get(y), timing.years().get(y).day()).inside()) {
        inside++;
      }
    }
    return (double) inside / traces.years().size();
  }

  /**
   * The use that the pass falls inside of in most years, the first one of equals; one that the
   * label refuses only when there is no other. Empty for no candidates.
   */
  public static Optional<Use> best(List<Use> candidates, TraceSet traces, PassTiming timing) {
    Use best = null;
    double most = -1;
    for (Use use : candidates) {
      double share = use.refused() ? -0.5 : shareInside(use, traces, timing);
      if (share > most) {
        best = use;
        most = share;
      }
    }
    return Optional.ofNullable(best);
  }
}
