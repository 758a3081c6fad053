package org.swathbook.season;

import org.swathbook.control.HeightClasses;
import org.swathbook.control.Setback;
import org.swathbook.growth.HeightModel;

/**
 * Heights of one weed as look-ups on its thermal age (°C-days of growth): the height class at an
 * age, and the age that a plant of a class falls back to when a foliar pass sets it back.
 */
final class HeightClock {
  /** Slices of age per height class, so that a look-up is a step or two. */
  private static final int SLICES_PER_CLASS = 4;

  private final HeightModel model;
  private final double[] classFrom;
  private final double slicesPerAge;

  /** The class at the start of each slice of age. */
  private final int[] atSlice;

  private final double[][] fallsBackTo;

  HeightClock(HeightModel model) {
    this.model = model;
    int top = HeightClasses.of(model.maxCm());
    classFrom = new double[top];
    for (int k = 1; k <= top; k++) {
      classFrom[k - 1] = model.ageAt((k - 0.5) * HeightClasses.STEP_CM);
    }
    int slices = SLICES_PER_CLASS * top;
    double oldest = top == 0 ? 0 : classFrom[top - 1];
    slicesPerAge = oldest > 0 ? slices / oldest : 0;
    atSlice = new int[slices + 1];
    int k = 0;
    for (int s = 1; s <= slices && slicesPerAge > 0; s++) {
      // By the slice before: a rounded look-up may then start too low, never too high.
      while (k < top && classFrom[k] <= (s - 1) / slicesPerAge) {
        k++;
      }
      atSlice[s] = k;
    }
    fallsBackTo = new double[Setback.values().length][HeightClasses.COUNT];
    for (Setback s : Setback.values()) {
      for (int c = 0; c < HeightClasses.COUNT; c++) {
        fallsBackTo[s.rank()][c] = model.ageAt(s.heightKept() * HeightClasses.heightCm(c));
      }
    }
  }

  int classAt(double age) {
    int slice = (int) Math.min(atSlice.length - 1.0, age * slicesPerAge);
    int k = age > 0 ? atSlice[slice] : 0;
    while (k < classFrom.length && classFrom[k] <= age) {
      k++;
    }
    return k;
  }

  double heightCm(double age) {
    return model.heightCm(age);
  }

  double ageAfter(int setbackRank, int heightClass) {
    return fallsBackTo[setbackRank][heightClass];
  }

  /** The same by height class; not to be written to. */
  double[] agesAfter(int setbackRank) {
    return fallsBackTo[setbackRank];
  }
}
