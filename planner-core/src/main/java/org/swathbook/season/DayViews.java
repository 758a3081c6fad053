package org.swathbook.season;

import java.util.concurrent.atomic.AtomicReferenceArray;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.loss.Removal;

/** Day views by year and day, made when first asked for; two threads may make the same one. */
final class DayViews {
  private final TraceSet traces;
  private final HeightClock[] clocks;
  private final Removal removal;
  private final AtomicReferenceArray<DayView>[] kept;

  @SuppressWarnings({"unchecked", "rawtypes"})
  DayViews(TraceSet traces, HeightClock[] clocks, Removal removal) {
    this.traces = traces;
    this.clocks = clocks;
    this.removal = removal;
    this.kept = new AtomicReferenceArray[traces.years().size()];
    for (int y = 0; y < kept.length; y++) {
      kept[y] = new AtomicReferenceArray<>(traces.years().get(y).days());
    }
  }

  DayView of(int year, int day) {
    DayView v = kept[year].get(day);
    if (v == null) {
      v = new DayView(traces.years().get(year), day, clocks, removal);
      kept[year].set(day, v);
    }
    return v;
  }
}
