package org.swathbook.tank;

import static org.swathbook.tank.TankPart.CAPSULES;
import static org.swathbook.tank.TankPart.CONDITIONER;
import static org.swathbook.tank.TankPart.DRIFT_REDUCER;
import static org.swathbook.tank.TankPart.EMULSION;
import static org.swathbook.tank.TankPart.FERTILIZER;
import static org.swathbook.tank.TankPart.GRANULE;
import static org.swathbook.tank.TankPart.OIL;
import static org.swathbook.tank.TankPart.POWDER;
import static org.swathbook.tank.TankPart.SOLUBLE_DRY;
import static org.swathbook.tank.TankPart.SOLUTION;
import static org.swathbook.tank.TankPart.SURFACTANT;
import static org.swathbook.tank.TankPart.SUSPENDED_EMULSION;
import static org.swathbook.tank.TankPart.SUSPENSION;

import java.util.List;
import java.util.Set;

/**
 * What one published guide says of the order.
 *
 * @param name as a sentence names it
 * @param steps what goes in together, the first step first; what a guide does not name is missing
 */
record MixingGuide(String name, List<Set<TankPart>> steps) {

  /**
   * Oklahoma State University Extension PSS-2789; SDSU Extension, Preparing Spray Solutions: Mixing
   * Order; North Dakota Weed Control Guide 2021, second-hand; Utah State University Extension 2012,
   * Using a Jar Test; Missouri DOT Engineering Policy Guide 821.12.
   */
  static final List<MixingGuide> ALL =
      List.of(
          new MixingGuide(
              "Oklahoma State",
              List.of(
                  Set.of(CONDITIONER),
                  Set.of(POWDER, GRANULE),
                  Set.of(SUSPENSION, CAPSULES),
                  Set.of(SOLUTION),
                  Set.of(EMULSION),
                  Set.of(SURFACTANT, OIL))),
          new MixingGuide(
              "South Dakota State",
              List.of(
                  Set.of(CONDITIONER),
                  Set.of(POWDER, GRANULE),
                  Set.of(SUSPENSION),
                  Set.of(EMULSION),
                  Set.of(CAPSULES),
                  Set.of(SURFACTANT, OIL),
                  Set.of(DRIFT_REDUCER))),
          new MixingGuide(
              "North Dakota",
              List.of(
                  Set.of(CONDITIONER, SOLUBLE_DRY),
                  Set.of(POWDER, GRANULE),
                  Set.of(SUSPENSION, CAPSULES, SUSPENDED_EMULSION),
                  Set.of(EMULSION, OIL),
                  Set.of(SOLUTION, SURFACTANT))),
          new MixingGuide(
              "Utah State",
              List.of(
                  Set.of(POWDER),
                  Set.of(GRANULE),
                  Set.of(SUSPENSION, CAPSULES),
                  Set.of(EMULSION),
                  Set.of(SOLUTION),
                  Set.of(SOLUBLE_DRY),
                  Set.of(SURFACTANT, FERTILIZER))),
          new MixingGuide(
              "Missouri DOT",
              List.of(
                  Set.of(CONDITIONER),
                  Set.of(POWDER),
                  Set.of(SUSPENSION),
                  Set.of(GRANULE),
                  Set.of(EMULSION),
                  Set.of(SOLUTION),
                  Set.of(SURFACTANT))));

  MixingGuide {
    steps = List.copyOf(steps);
  }

  /** Whether it names both and puts the one into an earlier step. */
  boolean puts(TankPart one, TankPart beforeOther) {
    int a = step(one);
    int b = step(beforeOther);
    return a >= 0 && b >= 0 && a < b;
  }

  /** Whether it gives such a thing a place. */
  boolean names(TankPart part) {
    return step(part) >= 0;
  }

  private int step(TankPart part) {
    for (int s = 0; s < steps.size(); s++) {
      if (steps.get(s).contains(part)) {
        return s;
      }
    }
    return -1;
  }
}
