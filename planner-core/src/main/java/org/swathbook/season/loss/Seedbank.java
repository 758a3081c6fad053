package org.swathbook.season.loss;

import java.util.List;
import org.swathbook.catalog.SeedBiology;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * What escapes leave in the soil, as an order of magnitude.
 *
 * <p>Seed return {@code R = survivors x fecundity x time factor}; seedbank of the next year {@code
 * N' = N (1 - g) s + R} with {@code N = emergence of the season / g}, g the share of the seedbank
 * that comes up and s the share of the rest that lives through a year. So the bank is multiplied by
 * {@code (1 - g) s + R g / emergence}.
 *
 * <p>The time factor is the competition weight {@code exp(-0.6 T)}, T leaf stages of the crop at
 * emergence (default): a late plant sets less, as it competes less. Waterhemp in corn set 39,400 to
 * 48,400 seeds emerging with the crop, 9,000 at V3, about 950 at V5 and none at V8 (Nordby and
 * Hartzler 2004, Weed Science 52: 255-259).
 *
 * <p>Neither crowding of the survivors nor seed lost before it gets into the soil is counted, so
 * where many plants escape the figure is a ceiling.
 */
public final class Seedbank {
  private Seedbank() {}

  /**
   * Seeds/m² that the plants alive at harvest shed.
   *
   * @param seedingPerM2 survivors times their time factors, plants/m²
   */
  public static double returnPerM2(SeedBiology seed, double seedingPerM2) {
    return seedingPerM2 * seed.fecundity();
  }

  /** Seedbank of the next year beside this year's; without emergence only its losses. */
  public static double factor(SeedBiology seed, double returnPerM2, double emergencePerM2) {
    double kept = (1 - seed.emerged()) * seed.survival();
    return emergencePerM2 > 0 ? kept + returnPerM2 * seed.emerged() / emergencePerM2 : kept;
  }

  /** What the reference prints. */
  public static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.COST,
                Seedbank.class,
                "seed return",
                "survivors · fecundity · time factor, an order of magnitude; seedbank"
                    + " N' = N (1 − g) s + seed, N = emergence/g",
                "default; beside it waterhemp in corn, Nordby & Hartzler 2004")
            .given(
                "time factor exp(−C T) as above; fecundity, g and s of the catalog; crowding and"
                    + " seed lost before the soil are not counted: a ceiling where many escape"));
  }
}
