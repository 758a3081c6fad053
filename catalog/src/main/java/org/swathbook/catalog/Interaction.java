package org.swathbook.catalog;

import java.util.Optional;
import java.util.Set;
import org.swathbook.measure.Rate;

/**
 * What two partners of one tank do to each other on some weeds.
 *
 * @param affects the side whose control is lost by an antagonism
 * @param size antagonism: share of the affected side's control that is lost; synergy: share of the
 *     joint survival that remains; empty when the source tells the kind but no number, so that the
 *     pair is shown and not counted
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
    Optional<Shares> size,
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

  /** From a lowest to a highest share; equal when a source gives one. The middle counts. */
  public record Shares(double low, double high) {

    public double middle() {
      return (low + high) / 2;
    }
  }

  /** A rate of an active from which on the interaction does not show. */
  public record Unless(IngredientId ingredient, Rate atLeast) {}

  public Interaction {
    weeds = Ordered.set(weeds);
  }

  /**
   * Antagonism: what remains of the affected side's control; synergy: what remains of the joint
   * survival; 1 when its size is not known.
   */
  public double factor() {
    double middle = size.map(Shares::middle).orElse(kind == Kind.SYNERGY ? 1.0 : 0.0);
    return kind == Kind.SYNERGY ? middle : 1 - middle;
  }

  /** Whether its size is known. */
  public boolean isCounted() {
    return factor() < 1;
  }

  public boolean concerns(Weed weed) {
    return weeds.contains(weed.id()) || kindOfWeed.isPresent() && kindOfWeed.get() == weed.kind();
  }
}
