package org.swathbook.catalog;

import java.util.OptionalDouble;

/**
 * Expected control of a susceptible weed by an active at its high labelled rate.
 *
 * @param emaxPct typical control, percent; for soil activity seen at 4 to 6 weeks under timely rain
 * @param controlHeightCm weed height at which a foliar figure was rated
 */
public record Response(
    WeedId weed,
    IngredientId ingredient,
    Timing timing,
    double emaxPct,
    double lowPct,
    double highPct,
    OptionalDouble controlHeightCm,
    Source source,
    String confidence) {

  /** When the figure was taken. */
  public enum Timing {
    PRE,
    POST,
    BURNDOWN
  }
}
