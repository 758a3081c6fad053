package org.swathbook.season;

/** Sees the plants of a cell group as the kernel walks; the search runs without one. */
interface Census {

  /**
   * The cohorts of one biotype that are up when a pass comes, before it does anything.
   *
   * @param pass place in the list of passes
   * @param from cohorts from to up - 1 stand
   * @param alive share of each cohort's plants alive, of those that tillage left
   * @param heightCm of each cohort of which any plant is alive
   * @param heightClass by which the pass acts
   */
  void standing(
      int pass,
      int year,
      int weed,
      int biotype,
      int from,
      int up,
      double[] alive,
      double[] heightCm,
      byte[] heightClass);
}
