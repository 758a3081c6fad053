package org.swathbook.growth;

import java.util.List;

/**
 * The weeds of a field through one weather year, day by day, on a soil whose course is known. Every
 * day, all rates are taken from the states of the evening before and what the day brings, and only
 * then are the states moved on. No weed reads the state of another, nor do plants read that of the
 * seeds, so each goes through the year by itself.
 */
final class OutdoorModel {
  private final List<Seedlings> seedlings;
  private final List<WeedGrowth> growth;

  /** Weeds in the order of the field. */
  OutdoorModel(List<Seedlings> seedlings, List<WeedGrowth> growth) {
    this.seedlings = List.copyOf(seedlings);
    this.growth = List.copyOf(growth);
  }

  OutdoorYear run(SoilCourse soil, CanopyClock canopy) {
    OutdoorYear year = new OutdoorYear(seedlings.size(), soil.days());
    for (int w = 0; w < seedlings.size(); w++) {
      comeUp(seedlings.get(w), soil, canopy, year.emerging[w]);
      grow(growth.get(w), soil, canopy, year.thermal[w]);
    }
    return year;
  }

  private static void comeUp(
      Seedlings model, SoilCourse soil, CanopyClock canopy, double[] emerging) {
    Seedlings.State state = model.before();
    for (int d = 0; d < emerging.length; d++) {
      Seedlings.Rates rates = model.rates(state, soil.on(d, canopy.isClosed(d)));
      state = model.integrate(state, rates);
      emerging[d] = rates.emerging();
    }
  }

  private static void grow(
      WeedGrowth model, SoilCourse soil, CanopyClock canopy, double[] thermal) {
    WeedGrowth.State state = model.before();
    for (int d = 0; d < thermal.length; d++) {
      state = model.integrate(state, model.rates(soil.on(d, canopy.isClosed(d))));
      thermal[d] = state.heat();
    }
  }
}
