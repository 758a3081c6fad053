package org.swathbook.rules;

import java.util.OptionalDouble;
import org.swathbook.book.HouseRules;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.WeedHeights;

/**
 * What the response table says of actives on a weed at a pass, and whether the weed resists them.
 */
public final class Rated {
  private Rated() {}

  /**
   * Percent through leaves at the control height; 0 without foliar activity, empty when not known.
   */
  public static OptionalDouble foliarPct(PassFacts facts, WeedPressure weed, Ingredient active) {
    return active.hasFoliarActivity()
        ? pct(facts, weed, active, facts.foliarTiming())
        : OptionalDouble.of(0);
  }

  /** Percent through the soil; 0 without soil activity, empty when not known. */
  public static OptionalDouble soilPct(PassFacts facts, WeedPressure weed, Ingredient active) {
    return active.hasSoilActivity()
        ? pct(facts, weed, active, Response.Timing.PRE)
        : OptionalDouble.of(0);
  }

  private static OptionalDouble pct(
      PassFacts facts, WeedPressure weed, Ingredient active, Response.Timing timing) {
    return facts.book().catalog().response(weed.weed().id(), active.id(), timing).find().stream()
        .mapToDouble(Response::emaxPct)
        .findFirst();
  }

  /**
   * Whether an active is rated to work on a weed, through leaves or soil, as well as the house
   * asks, and the weed does not resist it.
   */
  public static boolean works(PassFacts facts, WeedPressure weed, Ingredient active) {
    HouseRules house = facts.book().house();
    return !isResisted(weed, active)
        && (foliarPct(facts, weed, active).orElse(0) >= 100 * house.effectiveSite()
            || soilPct(facts, weed, active).orElse(0) >= 100 * house.effectiveSoilSite());
  }

  /** Whether a resistance is listed or suspected, at any share. */
  public static boolean isResisted(WeedPressure weed, Ingredient active) {
    for (Resistance r : weed.listed()) {
      if (r.concerns(active)) {
        return true;
      }
    }
    return false;
  }

  /**
   * The tallest plants of a weed's kind that a label names. Sedges go by no height that labels give
   * for grasses or broadleaf weeds.
   */
  public static OptionalDouble tallestCm(WeedHeights heights, WeedPressure weed) {
    return switch (weed.weed().kind()) {
      case BROADLEAF -> heights.broadleafCm();
      case GRASS -> heights.grassCm();
      case SEDGE -> OptionalDouble.empty();
    };
  }
}
