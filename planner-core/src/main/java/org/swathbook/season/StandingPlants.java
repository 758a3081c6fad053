package org.swathbook.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The plants of one weed that stand when a pass comes in one year. */
final class StandingPlants {
  private record Group(double perM2, double heightCm) {}

  private static final Comparator<Group> BY_HEIGHT = Comparator.comparingDouble(Group::heightCm);

  private final HeightCounts counts = new HeightCounts();
  private final List<Group> groups = new ArrayList<>();

  /** By height, made when first asked for: several threads may ask once all are added. */
  private volatile @Nullable List<Group> byHeight;

  private double weighted;

  /** All plants of a biotype that a walk sees standing on a day. */
  void add(Kernel kernel, int day, StandingCohorts up) {
    double[] weight = kernel.cell(up.year(), up.weed()).weight;
    double[] plants = up.perM2(kernel, day);
    for (int i = 0; i < plants.length; i++) {
      int c = up.from() + i;
      if (plants[i] > 0) {
        counts.add(plants[i], up.heightClass()[c]);
        groups.add(new Group(plants[i], up.heightCm()[c]));
        weighted += plants[i] * weight[c];
      }
    }
    byHeight = null;
  }

  double perM2() {
    return counts.perM2();
  }

  /** Plants/m², each by its competition beside one up before the crop. */
  double weightedPerM2() {
    return weighted;
  }

  /** Height that a share of the plants, 0 to 1 by number, does not exceed; NaN when none stand. */
  double percentileCm(double share) {
    double sum = 0;
    double last = Double.NaN;
    for (Group g : byHeight()) {
      sum += g.perM2();
      last = g.heightCm();
      if (sum >= share * perM2() * HeightCounts.ROUNDING) {
        return last;
      }
    }
    return last;
  }

  /** Class of that height; 0 when none stand. */
  int percentileClass(double share) {
    return counts.percentileClass(share);
  }

  private List<Group> byHeight() {
    List<Group> now = byHeight;
    if (now == null) {
      now = new ArrayList<>(groups);
      now.sort(BY_HEIGHT);
      byHeight = now;
    }
    return now;
  }
}
