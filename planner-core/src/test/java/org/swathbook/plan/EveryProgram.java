package org.swathbook.plan;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.Stop;

/** All programs that can be made of some passes, one after the other: nothing is left out. */
public final class EveryProgram {
  private EveryProgram() {}

  /** Programs of one pass and more, no two passes on one date. */
  public static List<Draft> of(List<Stop> stops, int mostPasses) {
    List<Draft> out = new ArrayList<>();
    grow(out, Draft.EMPTY, stops, mostPasses, 0);
    return out;
  }

  private static void grow(
      List<Draft> out, Draft draft, List<Stop> stops, int mostPasses, int from) {
    for (int i = from; i < stops.size() && draft.stops().size() < mostPasses; i++) {
      if (!draft.hasDate(stops.get(i).date())) {
        Draft longer = draft.with(stops.get(i));
        out.add(longer);
        grow(out, longer, stops, mostPasses, i + 1);
      }
    }
  }
}
