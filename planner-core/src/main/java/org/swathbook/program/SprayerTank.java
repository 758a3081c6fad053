package org.swathbook.program;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.TankTerms;

/**
 * The sprayer's tank and what it held before.
 *
 * @param gallons what it holds
 * @param lastLoad actives of the load before this one; empty when that is not known, an empty list
 *     when the tank is new or held nothing that matters
 * @param cleaned how it was cleaned since; empty when not said
 */
public record SprayerTank(
    OptionalDouble gallons,
    Optional<List<IngredientId>> lastLoad,
    Optional<TankTerms.Rinse> cleaned) {

  public static final SprayerTank UNKNOWN =
      new SprayerTank(OptionalDouble.empty(), Optional.empty(), Optional.empty());

  public SprayerTank {
    lastLoad = lastLoad.map(List::copyOf);
  }
}
