package org.swathbook.program;

import java.util.ArrayList;
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
 * @param earlier loads before the last one, the latest first, as far back as the last full
 *     clean-out; empty when nobody says
 */
public record SprayerTank(
    OptionalDouble gallons,
    Optional<List<IngredientId>> lastLoad,
    Optional<TankTerms.Rinse> cleaned,
    Optional<List<EarlierLoad>> earlier) {

  public static final SprayerTank UNKNOWN =
      new SprayerTank(OptionalDouble.empty(), Optional.empty(), Optional.empty());

  public SprayerTank {
    lastLoad = lastLoad.map(List::copyOf);
    earlier = earlier.map(List::copyOf);
  }

  /** Of whose earlier loads nobody says anything. */
  public SprayerTank(
      OptionalDouble gallons,
      Optional<List<IngredientId>> lastLoad,
      Optional<TankTerms.Rinse> cleaned) {
    this(gallons, lastLoad, cleaned, Optional.empty());
  }

  /** All loads that are known of, the latest first. */
  public List<EarlierLoad> loads() {
    List<EarlierLoad> out = new ArrayList<>();
    lastLoad.ifPresent(held -> out.add(new EarlierLoad(held, cleaned)));
    earlier.ifPresent(out::addAll);
    return out;
  }
}
