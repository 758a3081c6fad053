package org.swathbook.weather;

import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

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

  private final Parameters parameters;

  /**
   * What the layer holds, mm.
   *
   * @param capacityMm water at field capacity
   * @param totalMm all water that evaporation can take (TEW, FAO-56 equation 73)
   * @param readilyMm water that leaves at the full rate (REW)
   */
  public record Parameters(double capacityMm, double totalMm, double readilyMm) {
    /**
     * Of a soil by its water contents, m³/m³, and its readily evaporable water, mm.
     *
     * @throws IllegalArgumentException when field capacity is not above the wilting point
     */
    public static Parameters of(
        double fieldCapacity, double wiltingPoint, double readilyEvaporableMm) {
      if (!(wiltingPoint >= 0 && fieldCapacity > wiltingPoint)) {
        throw new IllegalArgumentException("field capacity must be above the wilting point");
      }
      double totalMm = 1000 * (fieldCapacity - 0.5 * wiltingPoint) * DEPTH_M;
      return new Parameters(
          1000 * fieldCapacity * DEPTH_M, totalMm, Math.min(readilyEvaporableMm, totalMm));
    }
  }

  /**
   * @param depletionMm water missing to field capacity at the end of a day
   */
  public record State(double depletionMm) {}

  /**
   * Rain comes first in a day, so it is the wetted layer that dries (FAO-56 equation 77).
   *
   * @param wettingMm rain and irrigation that the layer can hold, mm/day
   * @param evaporationMm mm/day
   */
  public record Rates(double wettingMm, double evaporationMm) {}

  public EvaporationLayer(Parameters parameters) {
    this.parameters = parameters;
  }

  /**
   * Before the first day of a record: the readily evaporable water is gone. A first good rain
   * forgets that.
   */
  public State before() {
    return new State(parameters.readilyMm);
  }

  /**
   * @param referenceMm reference evapotranspiration of the day, mm
   */
  public Rates rates(State yesterday, double rainMm, double referenceMm) {
    double wetting = Math.min(yesterday.depletionMm, rainMm);
    double wetted = yesterday.depletionMm - wetting;
    return new Rates(wetting, reduction(wetted) * WET_BARE_SOIL * referenceMm);
  }

  /** Nothing dries beyond what evaporation can take. */
  public State integrate(State yesterday, Rates rates) {
    double wetted = yesterday.depletionMm - rates.wettingMm;
    return new State(Math.min(parameters.totalMm, wetted + rates.evaporationMm));
  }

  /** All water that evaporation can take (TEW, FAO-56 equation 73), mm. */
  public double totalEvaporableMm() {
    return parameters.totalMm;
  }

  /** Evaporation reduction Kr at a depletion in mm (FAO-56 equation 74), 1 to 0. */
  public double reduction(double depletionMm) {
    if (depletionMm <= parameters.readilyMm) {
      return 1;
    }
    return Math.max(
        0, (parameters.totalMm - depletionMm) / (parameters.totalMm - parameters.readilyMm));
  }

  /** Water over water at field capacity. */
  public double relativeWater(State state) {
    return (parameters.capacityMm - state.depletionMm) / parameters.capacityMm;
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEATHER,
                EvaporationLayer.class,
                "topsoil water",
                "rates: wetting min(D, rain), then evaporation Kr · e · ET0; Kr = (TEW − D)/(TEW − REW) past REW; TEW = 1000 (θfc − ½θwp) · depth",
                "FAO-56 (Allen et al. 1998), chapter 7 and Table 19; depth, e and mid values from memory")
            .with("depth", DEPTH_M, "m")
            .with("e", WET_BARE_SOIL, "")
            .given("depletion D in mm; θ and REW by texture in the catalog's `SoilTexture`"));
  }
}
