package org.swathbook.season;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The cohorts of a biotype of a weed in a year after some passes, as their actives on leaves have
 * left them. Never changed once it is made.
 */
final class LeafState {
  /** Of the plants that the soil lets live, the share that the leaves' actives have left. */
  final double[] alive;

  /** The same on the day on which control is rated; null when no pass came after it. */
  final double @Nullable [] whenRated;

  /** What the dead have already cost the crop, as a share of what they would cost alive. */
  final double[] cost;

  /** By how much plants are set back, and below what they do not fall; degree-days. */
  final double[] delay;

  final double[] floor;

  /** Whether an effective dose met the plants in size. */
  final boolean[] met;

  /** How often the weed had been scouted. */
  final int scoutings;

  LeafState(
      double[] alive,
      double @Nullable [] whenRated,
      double[] cost,
      double[] delay,
      double[] floor,
      boolean[] met,
      int scoutings) {
    this.alive = alive;
    this.whenRated = whenRated;
    this.cost = cost;
    this.delay = delay;
    this.floor = floor;
    this.met = met;
    this.scoutings = scoutings;
  }

  /** Before any pass. */
  static LeafState start(int cohorts) {
    double[] alive = new double[cohorts];
    Arrays.fill(alive, 1);
    double[] none = new double[cohorts];
    return new LeafState(alive, null, none, none, none, new boolean[cohorts], 0);
  }

  /** The size that was seen already holds what earlier passes had set back. */
  LeafState scouted(int times) {
    return new LeafState(
        alive, whenRated, cost, new double[delay.length], floor, met, times);
  }

  /** On a day after that of rating, or before it when it is. */
  LeafState rated() {
    return new LeafState(alive, alive, cost, delay, floor, met, scoutings);
  }

  /** With arrays of its own, which a pass may still write to. */
  LeafState copy() {
    return new LeafState(
        alive.clone(),
        whenRated,
        cost.clone(),
        delay.clone(),
        floor.clone(),
        met.clone(),
        scoutings);
  }

  double[] aliveWhenRated() {
    double[] then = whenRated;
    return then == null ? alive : then;
  }
}
