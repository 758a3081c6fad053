package org.swathbook.growth;

import org.swathbook.catalog.Crop;

/**
 * The stages of a crop in one weather year, with the heights that the model gives it at them.
 *
 * @param heightCm by day, as if it were never harvested; not to be written to
 */
// A copy for every field would cost more than what it saves, and nobody compares two of them.
@SuppressWarnings("ArrayRecordComponent")
record CropCourse(CropClock clock, double[] heightCm) {

  static CropCourse of(Crop crop, CropClock clock) {
    CropHeight height = new CropHeight(crop);
    double[] cm = new double[clock.stage().length];
    for (int d = 0; d < cm.length; d++) {
      cm[d] = height.cm(clock.stage()[d]);
    }
    return new CropCourse(clock, cm);
  }
}
