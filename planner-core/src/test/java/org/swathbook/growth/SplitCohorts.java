package org.swathbook.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.swathbook.testing.Fixtures;

/** The same outdoors with one cohort of each weed written as two of the same day. */
public final class SplitCohorts {
  private SplitCohorts() {}

  /**
   * @param place picks the cohort, 0 to below 1 of the way through each weed's list
   * @param first share of its plants that goes into the first of the two, 0 to 1
   */
  public static TraceSet of(TraceSet traces, double place, double first) {
    return new TraceSet(
        traces.field(),
        traces.crop(),
        traces.weeds(),
        traces.years().stream().map(y -> year(y, Fixtures.book().season(), place, first)).toList());
  }

  private static SeasonTrace year(SeasonTrace t, int season, double place, double first) {
    boolean[] sprayable = new boolean[t.days()];
    for (int d = 0; d < t.days(); d++) {
      sprayable[d] = t.sprayable(d);
    }
    SeasonTrace.Daily daily =
        new SeasonTrace.Daily(
            byDay(t, t::stage),
            byDay(t, t::cropHeightCm),
            t.canopy(),
            t.soil(),
            IntStream.range(0, t.days()).mapToObj(t::weather).toList(),
            sprayable);
    List<CohortSet> weeds = new ArrayList<>();
    for (int w = 0; w < t.weedCount(); w++) {
      weeds.add(split(t.cohorts(w), t.days(), place, first));
    }
    return new SeasonTrace(
        t.year(),
        season,
        t.crop(),
        t.plantingDay(),
        t.emergenceDay(),
        t.harvestDay(),
        t.canopyDay(),
        daily,
        weeds,
        IntStream.range(0, t.weedCount()).map(t::neededUntil).toArray());
  }

  private static double[] byDay(SeasonTrace t, IntToDoubleFunction figure) {
    return IntStream.range(0, t.days()).mapToDouble(figure).toArray();
  }

  private static CohortSet split(CohortSet all, int days, double place, double first) {
    int n = all.count();
    if (n == 0) {
      return all;
    }
    int at = (int) (place * n);
    int[] emergedOn = new int[n + 1];
    double[] perM2 = new double[n + 1];
    double[] tillage = new double[n + 1];
    for (int c = 0; c <= n; c++) {
      int from = c <= at ? c : c - 1;
      emergedOn[c] = all.emergedOn(from);
      tillage[c] = all.tillageSurvival(from);
      perM2[c] = all.perM2(from) * (c == at ? first : c == at + 1 ? 1 - first : 1);
    }
    // Growth before the first plant is up concerns nobody.
    double[] thermal = IntStream.range(0, days).mapToDouble(d -> all.age(0, d)).toArray();
    return new CohortSet(all.weed(), emergedOn, perM2, tillage, thermal);
  }
}
