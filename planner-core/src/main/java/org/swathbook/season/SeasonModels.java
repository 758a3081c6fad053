package org.swathbook.season;

import java.util.List;
import java.util.stream.Stream;
import org.swathbook.model.ModelCard;
import org.swathbook.season.loss.LateRemoval;
import org.swathbook.season.loss.Removal;
import org.swathbook.season.loss.Seedbank;
import org.swathbook.season.loss.YieldLoss;

/** The cards of this package's models, in the order of the reference. */
public final class SeasonModels {
  private SeasonModels() {}

  public static List<ModelCard> cards() {
    return Stream.of(
            SoilJoint.cards(),
            SoilDays.cards(),
            LayerFinder.cards(),
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
