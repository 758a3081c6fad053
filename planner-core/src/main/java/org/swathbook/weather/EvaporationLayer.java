package org.swathbook.weather;

import java.util.List;

/**
 * Water in the top 10 cm of bare soil: the evaporation layer of FAO Irrigation and Drainage Paper
 * 56 (Allen et al. 1998, chapter 7). It wets with rain and irrigation, drains what it cannot hold
 * and dries by {@code Kr · 1.15 · ET0}, where Kr falls once the readily evaporable water is gone.
 * It is an index for the fade of herbicides, not a forecast of soil moisture: no roots, no run-off,
 * no snow.
 */
public final class EvaporationLayer {
  /** Depth of the layer in m (FAO-56 chapter 7: 0.10 to 0.15; from memory). */
  public static final double DEPTH_M = 0.10;

  /** Evaporation of wet bare soil over reference (FAO-56 annex 7: Eso = 1.15 ET0; from memory). */
  public static final double WET_BARE_SOIL = 1.15;

  private final double capacityMm;
  private final double totalMm;
  private final double readilyMm;

  /**
   * @param fieldCapacity m³/m³
   * @param wiltingPoint m³/m³
   * @param readilyEvaporableMm water that leaves at the full rate (REW)
   */
  public EvaporationLayer(double fieldCapacity, double wiltingPoint, double readilyEvaporableMm) {
    if (!(wiltingPoint >= 0 && fieldCapacity > wiltingPoint)) {
      throw new IllegalArgumentException("field capacity must be above the wilting point");
    }
    this.capacityMm = 1000 * fieldCapacity * DEPTH_M;
    this.totalMm = 1000 * (fieldCapacity - 0.5 * wiltingPoint) * DEPTH_M;
    this.readilyMm = Math.min(readilyEvaporableMm, totalMm);
  }

  /** All water that evaporation can take (TEW, FAO-56 equation 73), mm. */
  public double totalEvaporableMm() {
    return totalMm;
  }

  /** Evaporation reduction Kr at a depletion in mm (FAO-56 equation 74), 1 to 0. */
  public double reduction(double depletionMm) {
    if (depletionMm <= readilyMm) {
      return 1;
    }
    return Math.max(0, (totalMm - depletionMm) / (totalMm - readilyMm));
  }

  /** Depletion at the end of a day (FAO-56 equation 77 on bare soil): rain first, then drying. */
  public double nextDepletion(double depletionMm, double rainMm, double referenceMm) {
    double wetted = Math.max(0, depletionMm - rainMm);
    return Math.min(totalMm, wetted + reduction(wetted) * WET_BARE_SOIL * referenceMm);
  }

  /** Water over water at field capacity at a depletion. */
  public double relativeWater(double depletionMm) {
    return (capacityMm - depletionMm) / capacityMm;
  }

  /**
   * θ over field capacity at the end of each day of a record. The record starts with the readily
   * evaporable water gone; a first good rain forgets that.
   */
  public double[] relativeWater(List<WeatherDay> days, double latitude) {
    double[] out = new double[days.size()];
    double depletion = readilyMm;
    for (int d = 0; d < out.length; d++) {
      WeatherDay day = days.get(d);
      depletion = nextDepletion(depletion, day.rainMm(), Hargreaves.referenceMm(day, latitude));
      out[d] = relativeWater(depletion);
    }
    return out;
  }
}
