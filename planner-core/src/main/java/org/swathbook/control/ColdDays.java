package org.swathbook.control;

import java.util.List;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceSet;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * How many days about a pass are cold ones, over the weather years of a field. By how much the cold
 * slows a site nobody has published as a figure that would hold from weed to weed, so it does not
 * lower what is said of control; but a site that is sprayed into it is not counted on. Days beside
 * the very one count too: ten years have ten of a date, and chance would make one date warm between
 * two that are cold.
 */
public final class ColdDays {
  private static final int BESIDE = 3;
  private static final double MOSTLY = 0.5;

  /** By year: cold days before a day. */
  private final int[][] before;

  private ColdDays(int[][] before) {
    this.before = before;
  }

  public static ColdDays of(TraceSet traces) {
    int[][] before = new int[traces.years().size()][];
    for (int y = 0; y < before.length; y++) {
      SeasonTrace trace = traces.years().get(y);
      before[y] = new int[trace.days() + 1];
      for (int d = 0; d < trace.days(); d++) {
        before[y][d + 1] = before[y][d] + (ColdDay.is(trace.weather(d)) ? 1 : 0);
      }
    }
    return new ColdDays(before);
  }

  /**
   * Share, 0 to 1, of the days no more than three from those of a pass that are cold; 0 where no
   * year has a day for it.
   */
  public double about(PassTiming timing) {
    int cold = 0;
    int all = 0;
    for (int y = 0; y < before.length; y++) {
      int days = before[y].length - 1;
      int day = timing.years().get(y).day();
      if (day < days) {
        int from = Math.max(0, day - BESIDE);
        int to = Math.min(days, day + BESIDE + 1);
        cold += before[y][to] - before[y][from];
        all += to - from;
      }
    }
    return all > 0 ? (double) cold / all : 0;
  }

  /** Whether that share is more than half. */
  public boolean isMostly(PassTiming timing) {
    return about(timing) > MOSTLY;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.LEAVES,
                ColdDays.class,
                "in the cold",
                "over the years more than s of the days no more than n from those of a pass to come"
                    + " are cold: sites 9, 10 and 27 count as"
                    + " half effective then, whatever they control",
                "default; that cold slows these sites is common practice")
            .with("n", BESIDE, "days")
            .with("s", MOSTLY, ""));
  }
}
