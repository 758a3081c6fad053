package org.swathbook.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.program.Anchor;

/** Turns the anchor of a pass into a planned date of the book's season. */
public final class Anchors {
  private Anchors() {}

  /**
   * The planned date. A stage or a weed height is planned for the median over the years (the lower
   * one of two) of the first day that brings it.
   *
   * @param percentile share of the standing, unsprayed plants whose height counts, as the house has
   *     it
   * @return empty when half of the years or more never bring it
   * @throws IllegalArgumentException for a stage that the crop, or a weed that the field, does not
   *     have
   */
  public static Optional<LocalDate> find(Anchor anchor, TraceSet traces, double percentile) {
    if (anchor instanceof Anchor.OnDate on) {
      return Optional.of(on.date());
    }
    if (anchor instanceof Anchor.Made made) {
      return Optional.of(made.date());
    }
    if (anchor instanceof Anchor.FromPlanting from) {
      return Optional.of(traces.field().plantDate().plusDays(from.days()));
    }
    if (anchor instanceof Anchor.AtStage at) {
      int stage = traces.crop().findStage(at.stage()).orElseThrow(() -> unknownStage(at, traces));
      return median(traces, trace -> trace.dayOfStage(stage));
    }
    Anchor.WhenWeedIs when = (Anchor.WhenWeedIs) anchor;
    int weed = placeOf(when, traces);
    return median(traces, trace -> firstDay(trace, weed, when.heightCm(), percentile));
  }

  /** The same for an anchor that must come: an error in words when it does not. */
  public static LocalDate resolve(Anchor anchor, TraceSet traces, double percentile) {
    return find(anchor, traces, percentile)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'"
                        + anchor
                        + "' does not come in field "
                        + traces.field().id()
                        + " in most weather years; give a date or days after planting"));
  }

  private interface DayIn {
    int of(SeasonTrace trace);
  }

  private static Optional<LocalDate> median(TraceSet traces, DayIn first) {
    List<LocalDate> dates = new ArrayList<>();
    for (SeasonTrace trace : traces.years()) {
      int day = first.of(trace);
      dates.add(day < trace.days() ? trace.bookDateOf(day) : LocalDate.MAX);
    }
    return Optional.of(Medians.of(dates)).filter(d -> !d.equals(LocalDate.MAX));
  }

  private static int firstDay(SeasonTrace trace, int weed, double heightCm, double percentile) {
    for (int d = 0; d < trace.days(); d++) {
      OptionalDouble height = StandingSize.percentileCm(trace, weed, d, percentile);
      if (height.isPresent() && height.getAsDouble() >= heightCm) {
        return d;
      }
    }
    return trace.days();
  }

  private static int placeOf(Anchor.WhenWeedIs when, TraceSet traces) {
    for (int w = 0; w < traces.weeds().size(); w++) {
      if (traces.weeds().get(w).weed().id().equals(when.weed())) {
        return w;
      }
    }
    throw new IllegalArgumentException(when.weed() + " is no weed of field " + traces.field().id());
  }

  private static IllegalArgumentException unknownStage(Anchor.AtStage at, TraceSet traces) {
    return new IllegalArgumentException(
        at.stage()
            + " is no stage of "
            + traces.crop().name()
            + "; it has "
            + String.join(", ", traces.crop().stages().stream().map(s -> s.name()).toList()));
  }
}
