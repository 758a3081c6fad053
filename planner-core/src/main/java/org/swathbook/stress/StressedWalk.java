package org.swathbook.stress;

import java.util.List;
import java.util.Optional;
import org.swathbook.check.Judgement;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * A changed situation, walked and judged.
 *
 * @param of what tells it from the others of its case; empty when there is but one
 * @param breaks what it breaks that the plain walk does not
 * @param watered the outcome with the residual watered in, where the field can be
 * @param milder the outcome of half the trouble
 */
public record StressedWalk(
    String of,
    SeasonOutcome outcome,
    Judgement judgement,
    Breaks breaks,
    List<FallenPass> fallen,
    Optional<SeasonOutcome> watered,
    Optional<SeasonOutcome> milder) {

  public StressedWalk {
    fallen = List.copyOf(fallen);
  }
}
