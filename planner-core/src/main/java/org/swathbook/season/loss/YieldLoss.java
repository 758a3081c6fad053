package org.swathbook.season.loss;

import java.util.List;
import java.util.Optional;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Competition;
import org.swathbook.catalog.CropId;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Yield loss by Cousens' hyperbola (1985, Annals of Applied Biology 107: 239-252): {@code x / (1 +
 * x/A)}, x the sum over the species of I times the plants that count.
 *
 * <p>With several species A is the largest of the field's weeds, whatever is left of each. An A
 * weighted by what survives would fall when a pass takes the weed of the larger A, and could then
 * make a field with fewer weeds lose more; with one fixed A the loss rises, ever more slowly, with
 * each plant of each species. With one species it is Cousens' formula as it stands.
 */
public final class YieldLoss {
  private final double[] perPlant;
  private final double greatest;

  private YieldLoss(double[] perPlant, double greatest) {
    this.perPlant = perPlant;
    this.greatest = greatest;
  }

  /** A weed whose competition with the crop is not known counts nothing here. */
  public static YieldLoss of(CropId crop, List<WeedPressure> weeds) {
    double[] perPlant = new double[weeds.size()];
    double greatest = 0;
    for (int w = 0; w < perPlant.length; w++) {
      Optional<Competition> c = Optional.ofNullable(weeds.get(w).weed().competition().get(crop));
      perPlant[w] = c.map(Competition::lossPerPlant).orElse(0.0);
      greatest = Math.max(greatest, c.map(Competition::greatestLoss).orElse(0.0));
    }
    return new YieldLoss(perPlant, greatest);
  }

  /** Loss per plant/m² that counts, as a share, as density nears zero. */
  public double perPlant(int weed) {
    return perPlant[weed];
  }

  /** The largest share that is lost, to plants without end. */
  public double greatest() {
    return greatest;
  }

  /** Share of the yield lost to a sum of I times plants. */
  public double share(double x) {
    return x > 0 ? x / (1 + x / greatest) : 0;
  }

  /** What the reference prints. */
  public static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.COST,
                YieldLoss.class,
                "loss",
                "x / (1 + x/A), x = Σ I D over species, A the largest of the field's weeds",
                "Cousens 1985; the fixed A is default, ours, so that no kill can raise the loss")
            .given("shares of the yield, from the catalog"));
  }
}
