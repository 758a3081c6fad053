package org.swathbook.control;

import java.util.List;
import java.util.stream.Stream;
import org.swathbook.model.ModelCard;

/** The cards of this package's models, in the order of the reference. */
public final class ControlModels {
  private ControlModels() {}

  public static List<ModelCard> cards() {
    return Stream.of(
            FadeCurve.cards(),
            SoilYear.cards(),
            ResidualCurve.cards(),
            SoilEffect.cards(),
            SoilReach.cards(),
            FoliarCurve.cards(),
            HeightClasses.cards(),
            ColdDay.cards(),
            ColdDays.cards(),
            Setback.cards(),
            JointAction.cards(),
            ResistanceFactors.cards())
        .flatMap(List::stream)
        .toList();
  }
}
