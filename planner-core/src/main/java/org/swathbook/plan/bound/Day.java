package org.swathbook.plan.bound;

import java.util.List;
import java.util.TreeSet;

/** A day on which passes may go out, with all that can be in them. */
final class Day {
  private final int date;
  private final List<Part> parts;
  private final double[] lossReach;
  private final double[] ratedReach;
  private final int mostMissed;

  /**
   * @param date its place on the planner's grid
   * @param lossReach by cohort, share of what it costs that a pass can take through leaves; {@code
   *     ratedReach} of what an eye rates
   */
  Day(int date, List<Part> parts, double[] lossReach, double[] ratedReach) {
    this.date = date;
    this.parts = List.copyOf(parts);
    this.lossReach = lossReach;
    this.ratedReach = ratedReach;
    TreeSet<Integer> missed = new TreeSet<>();
    parts.forEach(p -> missed.addAll(p.missed()));
    this.mostMissed = missed.size();
  }

  int date() {
    return date;
  }

  List<Part> parts() {
    return parts;
  }

  double[] lossReach() {
    return lossReach;
  }

  double[] ratedReach() {
    return ratedReach;
  }

  /** In how many years some dose or other of the day is missed: no tank of them misses more. */
  int mostMissed() {
    return mostMissed;
  }
}
