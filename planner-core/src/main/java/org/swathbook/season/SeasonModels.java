package org.swathbook.season;

import java.util.List;
import java.util.stream.Stream;
import org.swathbook.model.ModelCard;

/** The cards of this package's models, in the order of the reference. */
public final class SeasonModels {
  private SeasonModels() {}

  public static List<ModelCard> cards() {
    return Stream.of(
            SoilJoint.cards(),
            SoilDays.cards(),
            LayerFinder.cards(),
            SiteCounts.cards(),
            YearWeed.cards(),
            Removal.cards(),
            LateRemoval.cards(),
            YieldLoss.cards(),
            Seedbank.cards(),
            PassOutcomes.cards())
        .flatMap(List::stream)
        .toList();
  }
}
