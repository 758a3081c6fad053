package org.swathbook.plan;

import org.swathbook.plan.climb.Steps;

/**
 * How much is looked at before a plan is shown: counts of programs, never time, so that a plan is
 * the same everywhere. More effort mostly finds better programs, though a short way may end on a
 * hill that a longer one passes by; it proves them over more passes, and never changes what a
 * program is said to do. All counts are defaults, ours, chosen on the demo fields.
 */
public enum Effort {
  /** A first look at many fields. */
  QUICK,

  /** What a field is planned by. */
  USUAL,

  /** For those who wait. */
  THOROUGH;

  /**
   * @param starts programs climbed from, those that score best
   */
  record Climbs(int starts, Steps steps) {}

  Climbs climbs() {
    return switch (this) {
      case QUICK -> new Climbs(2, new Steps(2, 1, false));
      case USUAL -> new Climbs(6, new Steps(4, 0.1, true));
      case THOROUGH -> new Climbs(Integer.MAX_VALUE, new Steps(12, 0.1, true));
    };
  }

  /**
   * @param times how often passes around the best program are combined in search of a better one
   * @param passes how many are combined, then and for the proofs
   * @param around how many of those for the proofs stand around the best program
   * @param scored programs scored each time
   * @param walked neighbours walked to tell what mends a program that breaks a house rule: of each
   *     way to look at them so many
   */
  record Combined(int times, int passes, int around, int scored, int walked) {}

  Combined combined() {
    return switch (this) {
      case QUICK -> new Combined(2, 20, 10, 200, 0);
      case USUAL -> new Combined(12, 40, 20, 500, 20);
      case THOROUGH -> new Combined(20, 100, 50, 1_000, 200);
    };
  }

  /**
   * Programs scored before a proof is given up.
   *
   * @param first of the program to recommend
   * @param leastBad of the least bad program, where none meets the house rules
   * @param smaller of the cheapest program and of those with fewer passes
   * @param beside of each of the other programs shown beside the first
   * @param front of the front, each site of a program gone scored too, and what later passes may
   *     bring
   * @param loosened of the best program with one house rule loosened
   */
  record Proofs(int first, int leastBad, int smaller, int beside, int front, int loosened) {}

  Proofs proofs() {
    return switch (this) {
      case QUICK -> new Proofs(500, 300, 100, 50, 150, 10);
      case USUAL -> new Proofs(2_000, 1_000, 400, 200, 600, 50);
      case THOROUGH -> new Proofs(20_000, 6_000, 2_000, 800, 8_000, 200);
    };
  }

  /**
   * Rounds in which the bound on all programs is sharpened; 0 where it is not asked for. It takes
   * seconds, and the most of it is gained in the first rounds.
   */
  int ceilingRounds() {
    return this == THOROUGH ? 60 : 0;
  }
}
