package org.swathbook.growth;

import java.util.List;

/**
 * The weeds of a field through one weather year, under the crop of that field. No weed reads the
 * state of another, so each goes through the year by itself; up to the day on which the rows close
 * it goes as on open ground.
 */
final class OutdoorModel {
  private final List<WeedCourse> weeds;

  /** Weeds in the order of the field. */
  OutdoorModel(List<WeedCourse> weeds) {
    this.weeds = List.copyOf(weeds);
  }

  /**
   * @param days of the year
   */
  OutdoorYear run(int days, CanopyClock canopy) {
    OutdoorYear year = new OutdoorYear(weeds.size(), days);
    for (int w = 0; w < weeds.size(); w++) {
      WeedCourse open = weeds.get(w);
      int closed = Math.min(canopy.canopyDay(), open.days());
      System.arraycopy(open.emerging(), 0, year.emerging[w], 0, open.days());
      WeedGrowth model = open.growth();
      double[] thermal = year.thermal[w];
      model.open().copyTo(thermal, closed);
      double heat = closed == 0 ? 0 : thermal[closed - 1];
      for (int d = closed; d < open.days(); d++) {
        boolean shade = canopy.isClosed(d);
        if (shade) {
          year.emerging[w][d] *= Seedlings.UNDER_CANOPY;
        }
        heat = model.after(heat, d, shade);
        thermal[d] = heat;
      }
    }
    return year;
  }
}
