package org.swathbook.growth;

import java.util.List;
import java.util.stream.Stream;
import org.swathbook.model.ModelCard;

/** The cards of this package's models, in the order of the reference. */
public final class GrowthModels {
  private GrowthModels() {}

  public static List<ModelCard> cards() {
    return Stream.of(
            CropDevelopment.cards(),
            CropHeight.cards(),
            CanopyClock.cards(),
            EmergenceCurve.cards(),
            RainClock.cards(),
            Seedlings.cards(),
            CohortBuilder.cards(),
            WeedGrowth.cards(),
            HeightModel.cards(),
            ScoutedCohorts.cards(),
            TraceBuilder.cards(),
            SoilAge.cards())
        .flatMap(List::stream)
        .toList();
  }
}
