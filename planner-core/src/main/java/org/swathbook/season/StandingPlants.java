package org.swathbook.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.swathbook.control.HeightClasses;
import org.swathbook.growth.SeasonTrace;

/** The plants of one weed that stand when a pass comes in one year. */
final class StandingPlants {

  private record Group(double perM2, double heightCm, int heightClass) {}

  private static final Comparator<Group> BY_HEIGHT =
      (a, b) -> {
        int c = Double.compare(a.heightCm(), b.heightCm());
        return c != 0 ? c : Integer.compare(a.heightClass(), b.heightClass());
      };

  private final List<Group> groups = new ArrayList<>();

  /** By height, made when first asked for: several threads may ask once all are added. */
  private volatile @Nullable List<Group> byHeight;

  private double perM2;
  private double weighted;

  void add(double number, double heightCm, int heightClass) {
    groups.add(new Group(number, heightCm, heightClass));
    byHeight = null;
    perM2 += number;
  }

  /** All plants of a biotype that a walk sees standing on a day. */
  void add(Kernel kernel, int day, StandingCohorts up) {
    SeasonTrace trace = kernel.traces().years().get(up.year());
    YearWeed cell = kernel.cell(up.year(), up.weed());
    double share = kernel.traces().weeds().get(up.weed()).biotypes().get(up.biotype()).share();
    double[] number = day < trace.plantingDay() ? cell.first : cell.start;
    for (int c = up.from(); c < up.up(); c++) {
      double plants = number[c] * share * up.alive()[c];
      if (plants > 0) {
        add(plants, up.heightCm()[c], up.heightClass()[c]);
        weighted += plants * cell.weight[c];
      }
    }
  }

  double perM2() {
    return perM2;
  }

  /** Plants/m², each by its competition beside one up before the crop. */
  double weightedPerM2() {
    return weighted;
  }

  /** Height that a share of the plants, 0 to 1 by number, does not exceed; NaN when none stand. */
  double percentileCm(double share) {
    Group g = at(share);
    return g == null ? Double.NaN : g.heightCm();
  }

  /** Class of that height; 0 when none stand. */
  int percentileClass(double share) {
    Group g = at(share);
    return g == null ? 0 : Math.min(HeightClasses.COUNT - 1, g.heightClass());
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

  private @Nullable Group at(double share) {
    double sum = 0;
    Group last = null;
    for (Group g : byHeight()) {
      if (g.perM2() > 0) {
        sum += g.perM2();
        last = g;
        if (sum >= share * perM2 * (1 - 1e-12)) {
          return g;
        }
      }
    }
    return last;
  }
}
