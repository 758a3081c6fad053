package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.book.HouseRules;
import org.swathbook.control.TankActive;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Mix;

/**
 * Days of one weather year on which a tank lies inside the label windows of all its actives, by the
 * same question that decides whether a pass is missed.
 *
 * @param fromDay first and {@code toDay} last day of the trace that are open without a break
 */
public record WindowDays(int year, int fromDay, int toDay) {

  /** Of every year, in its order and by day, from one day of the trace to another. */
  public static List<WindowDays> of(
      HouseRules house, TraceSet traces, Mix mix, int firstDay, int lastDay) {
    PassWindows.OfTank windows = new PassWindows(traces, house).of(TankActive.of(mix));
    List<WindowDays> out = new ArrayList<>();
    for (int year = 0; year < traces.years().size(); year++) {
      SeasonTrace trace = traces.years().get(year);
      int last = Math.min(lastDay, trace.days() - 1);
      int from = -1;
      for (int day = Math.max(0, firstDay); day <= last + 1; day++) {
        boolean open = day <= last && windows.allow(year, day);
        if (open && from < 0) {
          from = day;
        } else if (!open && from >= 0) {
          out.add(new WindowDays(trace.year(), from, day - 1));
          from = -1;
        }
      }
    }
    return List.copyOf(out);
  }
}
