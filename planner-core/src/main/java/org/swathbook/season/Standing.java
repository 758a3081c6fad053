package org.swathbook.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.swathbook.growth.TraceSet;

/**
 * The plants of each weed that stand on the date of a pass after some others. They are the same for
 * whatever tank comes then.
 */
public final class Standing {
  private final boolean[][] stands;
  private final boolean[] inMedianYear;
  private final int[][] heightClass;

  private Standing(boolean[][] stands, boolean[] inMedianYear, int[][] heightClass) {
    this.stands = stands;
    this.inMedianYear = inMedianYear;
    this.heightClass = heightClass;
  }

  /**
   * @param next any pass on the date
   * @param of the weeds that are asked about, by their places in the set
   */
  public static Standing of(
      Kernel kernel, List<PreparedPass> passes, PreparedPass next, List<Integer> of) {
    HeightCounts[][] plants = plants(kernel, passes, next, of);
    int weeds = plants.length;
    int years = kernel.traces().years().size();
    boolean[][] stands = new boolean[weeds][years];
    boolean[] inMedianYear = new boolean[weeds];
    int[][] heightClass = new int[weeds][years];
    double percentile = kernel.house().sizePercentile();
    for (int w : of) {
      double[] perM2 = perM2(plants[w]);
      for (int y = 0; y < years; y++) {
        stands[w][y] = PassOutcomes.stands(perM2[y]);
        heightClass[w][y] = plants[w][y].percentileClass(percentile);
      }
      inMedianYear[w] = PassOutcomes.stands(Stats.median(perM2));
    }
    return new Standing(stands, inMedianYear, heightClass);
  }

  /**
   * Plants/m² of some weeds in the median year, in the order in which they are asked about.
   *
   * @param next any pass on the date
   * @param of the weeds that are asked about, by their places in the set
   */
  public static double[] medianPerM2(
      Kernel kernel, List<PreparedPass> passes, PreparedPass next, List<Integer> of) {
    HeightCounts[][] plants = plants(kernel, passes, next, of);
    return of.stream().mapToDouble(w -> Stats.median(perM2(plants[w]))).toArray();
  }

  /** By weed, then by year; no years of a weed that is not asked about. */
  private static HeightCounts[][] plants(
      Kernel kernel, List<PreparedPass> passes, PreparedPass next, List<Integer> of) {
    TraceSet traces = kernel.traces();
    HeightCounts[][] plants = new HeightCounts[traces.weeds().size()][];
    for (int w : of) {
      plants[w] = new HeightCounts[traces.years().size()];
      Arrays.setAll(plants[w], y -> new HeightCounts());
    }
    List<PreparedPass> all = new ArrayList<>(passes);
    all.add(next);
    kernel.standingAtLast(all, of, new Seen(kernel, next, plants));
    return plants;
  }

  /** Counts what stands; how tall it is to the inch does not matter here. */
  private static final class Seen implements Census {
    private final Kernel kernel;
    private final PreparedPass next;
    private final HeightCounts[][] plants;

    Seen(Kernel kernel, PreparedPass next, HeightCounts[][] plants) {
      this.kernel = kernel;
      this.next = next;
      this.plants = plants;
    }

    @Override
    public void standing(StandingCohorts up) {
      int day = next.timing().years().get(up.year()).day();
      plants[up.weed()][up.year()].add(kernel, day, up);
    }

    @Override
    public boolean asksHeights() {
      return false;
    }
  }

  private static double[] perM2(HeightCounts[] years) {
    return Arrays.stream(years).mapToDouble(HeightCounts::perM2).toArray();
  }

  /** Whether so many plants are a weed that stands, whatever the season's emergence. */
  public static boolean isStand(double perM2) {
    return PassOutcomes.stands(perM2);
  }

  /** Whether a weed stands in the median year. */
  public boolean stands(int weed) {
    return inMedianYear[weed];
  }

  /** Foliar sites of a pass on that date that are effective on a weed: bit n for site n. */
  public long effectiveSites(Kernel kernel, PreparedPass pass, int weed) {
    return new SiteCounts(kernel).effectiveFoliar(pass, weed, stands[weed], heightClass[weed]);
  }
}
