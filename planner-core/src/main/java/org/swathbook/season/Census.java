package org.swathbook.season;

/** Sees the plants of a cell group as the kernel walks; the search runs without one. */
interface Census {

  /** The cohorts of one biotype that are up when a pass comes. */
  void standing(StandingCohorts up);

  /** Whether it asks how tall they are; their classes of height it always has. */
  default boolean asksHeights() {
    return true;
  }
}
