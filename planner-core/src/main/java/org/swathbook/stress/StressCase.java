package org.swathbook.stress;

import java.util.List;

/** One way in which a season goes wrong: a pure function from a situation to changed ones. */
sealed interface StressCase
    permits NoRainAfterLayer,
        DownpourAfterLayer,
        LateSprayer,
        LatePlanting,
        MissingProduct,
        MoreResistance {

  /** Stable id, {@code late-post-6-days}. */
  String name();

  Posed pose(Situation plain);

  /** The cases that are put to every program, in the order of the report. */
  static List<StressCase> all() {
    return List.of(
        new NoRainAfterLayer(14),
        new DownpourAfterLayer(76.2, 3),
        new LateSprayer(6),
        new LateSprayer(9),
        new LatePlanting(14),
        new MissingProduct(),
        new MoreResistance());
  }
}
