package org.swathbook.catalog;

import java.util.Optional;
import java.util.Set;
import org.swathbook.measure.Rate;

/**
 * What two partners of one tank do to each other on some weeds.
 *
 * @param affects the side whose control is lost by an antagonism
 * @param factor antagonism: what remains of the affected side's control; synergy: what remains of
 *     the joint survival; 1 when the source tells the kind but no number, so that the pair is shown
 *     and not counted
 * @param remedy what helps; empty when nothing need
 * @param unless rate of an active at or above which the interaction does not show
 */
public record Interaction(
    Side one,
    Side other,
    Set<WeedId> weeds,
    Optional<WeedKind> kindOfWeed,
    Kind kind,
    Side affects,
    double factor,
    Optional<Unless> unless,
    String remedy,
    Source source) {

  /** Losing or gaining by the mix. */
  public enum Kind {
    ANTAGONISM,
    SYNERGY
  }

  /**
   * An active, or any active of a site, with another site that must also be in the tank where one
   * is named.
   */
  public record Side(Optional<IngredientId> ingredient, Optional<Site> site, Optional<Site> with) {}

  /** A rate of an active from which on the interaction does not show. */
  public record Unless(IngredientId ingredient, Rate atLeast) {}

  public Interaction {
    weeds = Ordered.set(weeds);
  }

  /** Whether its size is known. */
  public boolean isCounted() {
    return factor < 1;
  }

  public boolean concerns(Weed weed) {
    return weeds.contains(weed.id()) || kindOfWeed.filter(k -> k == weed.kind()).isPresent();
  }
}
