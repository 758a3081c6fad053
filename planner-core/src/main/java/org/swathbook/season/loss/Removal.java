package org.swathbook.season.loss;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import org.swathbook.catalog.Crop;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * What plants killed late have already cost, as a share of what they would have cost alive: 0
 * before the crop is up, then logistic in crop leaf stages, 5 % at the critical time of removal and
 * 50 % four leaf stages past it (critical times: Knezevic et al. 2003; the shape is a default).
 */
public final class Removal {
  private static final double STAGES_TO_HALF = 4;

  /** ln(0.95/0.05): from 5 % to 50 % of a logistic. */
  private static final double STEEPNESS = StrictMath.log(19) / STAGES_TO_HALF;

  /** Where a crop's critical time is not stated: the third leaf stage (default). */
  private static final double UNSTATED = 3;

  private final double bare;
  private final double afterResidual;

  private Removal(double bare, double afterResidual) {
    this.bare = bare;
    this.afterResidual = afterResidual;
  }

  public static Removal of(Crop crop, OptionalDouble rowCm) {
    double bare = leafStage(crop, crop.removalBareByRowCm(), rowCm);
    double after = leafStage(crop, crop.removalAfterResidualByRowCm(), rowCm);
    return new Removal(bare, Math.max(bare, after));
  }

  /** By the nearest row spacing stated; unknown rows take the earliest stage. */
  private static double leafStage(
      Crop crop, SortedMap<Double, String> byRow, OptionalDouble rowCm) {
    double best = Double.NaN;
    double nearest = Double.POSITIVE_INFINITY;
    for (var e : byRow.entrySet()) {
      double stage = leafStage(crop, e.getValue());
      double distance = rowCm.isPresent() ? Math.abs(rowCm.getAsDouble() - e.getKey()) : stage;
      if (distance < nearest) {
        nearest = distance;
        best = stage;
      }
    }
    return Double.isNaN(best) ? UNSTATED : best;
  }

  private static double leafStage(Crop crop, String name) {
    OptionalInt stage = crop.findStage(name);
    int first = crop.findStage(crop.leafStages().get(0)).orElseThrow();
    return stage.isPresent() ? Math.max(0, stage.getAsInt() - first + 1.0) : UNSTATED;
  }

  /** Share already cost when killed at this leaf stage of an emerged crop. */
  public double share(double leafStages, boolean residualInTheGround) {
    double half = (residualInTheGround ? afterResidual : bare) + STAGES_TO_HALF;
    return 1 / (1 + StrictMath.exp(-STEEPNESS * (leafStages - half)));
  }

  /** What the reference prints. */
  public static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.COST,
                Removal.class,
                "late removal",
                "plants killed at leaf stage t have cost the share ρ(t), logistic: 5 % at the critical time of removal, 50 % some stages on; 0 before emergence; soil kills cost nothing",
                "times Knezevic et al. 2003; shape default")
            .with("to half", STAGES_TO_HALF, "stages")
            .with("steepness", STEEPNESS, "a stage")
            .with("critical time where unstated: leaf stage", UNSTATED, "")
            .given(
                "critical time by row spacing, later where a layer holds on the day the crop comes up"));
  }
}
