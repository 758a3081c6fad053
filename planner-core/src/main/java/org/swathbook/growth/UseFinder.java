package org.swathbook.growth;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.swathbook.book.Field;
import org.swathbook.book.SoilRates;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.StateLimit;
import org.swathbook.catalog.Use;
import org.swathbook.measure.Quantity;

/**
 * The labelled uses that a spraying could be made under. Passes are broadcast: a use that is only
 * directed below the leaves, say, allows none of them.
 */
public final class UseFinder {
  private UseFinder() {}

  /**
   * Uses of an active for the field's crop or any crop, in this phase, for this formulation and the
   * field's state, in the order of the catalog. Uses that the label refuses are among them: they
   * say why not. In a field that names no state the uses with a limit by state stay in; that limit
   * is then to be asked about.
   *
   * @param formulation two-letter code of the product
   */
  public static List<Use> candidates(
      Ingredient active, String formulation, Field field, Position.Phase phase) {
    return active.uses().stream()
        .filter(u -> u.isFor(field.crop()) && u.isIn(phase) && u.isBy(Method.BROADCAST))
        .filter(u -> u.formulations().isEmpty() || u.formulations().contains(formulation))
        .filter(u -> mayBeIn(u, field))
        .toList();
  }

  /**
   * Uses of an active for the field's crop, in any part of its life, that this much of it could be
   * sprayed under: not refused, no trait needed that the field is known to lack, and no lower top
   * of the rates on the field's soils. So a day on which the crop is already up is no day for a
   * burndown rate, or for glyphosate over a crop without the trait. Traits and soils that the field
   * does not state close nothing here; rules ask about them.
   *
   * @param kgPerHa all of the active in the tank
   */
  public static List<Use> open(Ingredient active, String formulation, Field field, double kgPerHa) {
    return active.uses().stream()
        .filter(u -> u.isFor(field.crop()) && !u.refused() && u.isBy(Method.BROADCAST))
        .filter(u -> u.formulations().isEmpty() || u.formulations().contains(formulation))
        .filter(u -> mayBeIn(u, field))
        .filter(u -> !lacksTrait(u, field) && mayBring(u, field, kgPerHa))
        .toList();
  }

  private static boolean lacksTrait(Use use, Field field) {
    return use.traits()
        .find()
        .flatMap(needed -> field.traits().map(has -> !has.containsAll(needed)))
        .orElse(false);
  }

  private static boolean mayBring(Use use, Field field, double kgPerHa) {
    SoilRates rates = SoilRates.of(use, field);
    return rates instanceof SoilRates.Allowed a
        ? !Quantity.exceeds(kgPerHa, a.range().high().kgPerHa())
        : rates instanceof SoilRates.Unknown;
  }

  /** Whether a use is registered in the field's state; a field that names none closes nothing. */
  public static boolean mayBeIn(Use use, Field field) {
    StateLimit limit = use.registration().states();
    boolean anywhere = limit.only().isEmpty() && limit.refused().isEmpty();
    if (anywhere || field.state().isEmpty()) {
      return true;
    }
    String code = field.state().get().strip().toUpperCase(Locale.ROOT);
    return (limit.only().isEmpty() || named(limit.only(), code)) && !named(limit.refused(), code);
  }

  private static boolean named(Set<String> states, String code) {
    return states.stream().anyMatch(s -> s.strip().toUpperCase(Locale.ROOT).equals(code));
  }
}
