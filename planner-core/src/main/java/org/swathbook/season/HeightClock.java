package org.swathbook.season;

import org.swathbook.control.HeightClasses;
import org.swathbook.control.Setback;
import org.swathbook.growth.HeightModel;

/**
 * Heights of one weed as look-ups on its thermal age (°C-days of growth): the height class at an
 * age, and the age that a plant of a class falls back to when a foliar pass sets it back.
 */
final class HeightClock {
  private final double[] classFrom;
  private final double[][] fallsBackTo;

  HeightClock(HeightModel model) {
    int top = HeightClasses.of(model.maxCm());
    classFrom = new double[top];
    for (int k = 1; k <= top; k++) {
      classFrom[k - 1] = model.ageAt((k - 0.5) * HeightClasses.STEP_CM);
    }
    fallsBackTo = new double[Setback.values().length][HeightClasses.COUNT];
    for (Setback s : Setback.values()) {
      for (int k = 0; k < HeightClasses.COUNT; k++) {
        fallsBackTo[s.rank()][k] = model.ageAt(s.heightKept() * HeightClasses.heightCm(k));
      }
    }
  }

  int classAt(double age) {
    int low = 0;
    int high = classFrom.length;
    while (low < high) {
      int mid = (low + high) >>> 1;
      if (classFrom[mid] <= age) {
        low = mid + 1;
      } else {
        high = mid;
      }
    }
    return low;
  }

  double ageAfter(int setbackRank, int heightClass) {
    return fallsBackTo[setbackRank][heightClass];
  }
}
