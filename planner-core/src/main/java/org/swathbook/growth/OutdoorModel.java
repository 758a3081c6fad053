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

  OutdoorYear run(SoilCourse soil, CanopyClock canopy) {
    OutdoorYear year = new OutdoorYear(weeds.size(), soil.days());
    for (int w = 0; w < weeds.size(); w++) {
      WeedCourse open = weeds.get(w);
      int closed = Math.min(canopy.canopyDay(), open.days());
      System.arraycopy(open.emerging(), 0, year.emerging[w], 0, open.days());
      System.arraycopy(open.heat(), 0, year.thermal[w], 0, closed);
      WeedGrowth model = open.growth();
      WeedGrowth.State plants =
          closed == 0 ? model.before() : new WeedGrowth.State(open.heat()[closed - 1]);
      for (int d = closed; d < open.days(); d++) {
        boolean shade = canopy.isClosed(d);
        if (shade) {
          year.emerging[w][d] *= Seedlings.UNDER_CANOPY;
        }
        plants = model.integrate(plants, model.rates(soil.on(d, shade)));
        year.thermal[w][d] = plants.heat();
      }
    }
    return year;
  }
}
