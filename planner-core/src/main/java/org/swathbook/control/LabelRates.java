package org.swathbook.control;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.swathbook.book.Field;
import org.swathbook.book.SoilRates;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.growth.UseFinder;

/** The rates that a dose is measured against, in kg/ha. */
public final class LabelRates {
  private LabelRates() {}

  /**
   * Top of the label's range for the field's crop in this phase, of several uses the highest: what
   * control through leaves was rated at. Where a label takes the top off on a light soil it spares
   * the crop, and the weed needs no less ({@link SoilRates#throughLeaves}). Rates that dry down
   * ripe crops count for nothing here. Where the active has no such use, that of the crop in any
   * phase, then of any use: a rule blocks the dose, and the arithmetic still needs a scale. Empty
   * when no use states a rate.
   */
  public static OptionalDouble high(TankActive active, Field field, Position.Phase phase) {
    OptionalDouble inPhase =
        top(
            active.formulations().stream()
                .flatMap(f -> UseFinder.candidates(active.ingredient(), f, field, phase).stream()),
            field);
    if (inPhase.isPresent()) {
      return inPhase;
    }
    List<Use> all = active.ingredient().uses();
    OptionalDouble inCrop = top(all.stream().filter(u -> u.isFor(field.crop())), field);
    return inCrop.isPresent() ? inCrop : top(all.stream(), field);
  }

  private static OptionalDouble top(Stream<Use> uses, Field field) {
    return uses.filter(u -> !u.refused() && !u.isHarvestAid())
        .flatMap(u -> SoilRates.throughLeaves(u, field).stream())
        .mapToDouble(r -> r.high().kgPerHa())
        .max();
  }

  private static OptionalDouble highest(Use use) {
    return SoilRates.onAnySoil(use).stream().mapToDouble(r -> r.high().kgPerHa()).findFirst();
  }

  /**
   * What the field's soil needs of a residual active for the stated lengths, as a share of the
   * highest labelled rate on any soil: 1.27 of 1.91 lb on a coarse soil holds as long there as 1.91
   * lb on a fine one. Taken from the uses that grade rates by soil, the largest share of several,
   * those of the crop first and else of any crop, since a soil binds an active whatever grows on
   * it. A label that takes the top off on some soils and leaves the low end spares the crop or the
   * water, and says nothing of what the soil needs (default, ours): dicamba over corn on sand,
   * atrazine on slopes. 1 when nothing is graded or the soil is not known.
   */
  public static double soilShare(Ingredient active, Field field) {
    OptionalDouble own = share(active.uses().stream().filter(u -> u.isFor(field.crop())), field);
    return (own.isPresent() ? own : share(active.uses().stream(), field)).orElse(1);
  }

  private static OptionalDouble share(Stream<Use> uses, Field field) {
    return uses.filter(u -> !u.refused() && SoilRates.isGradedByNeed(u))
        .mapToDouble(
            u ->
                SoilRates.of(u, field) instanceof SoilRates.Allowed a
                    ? Math.min(1, a.range().high().kgPerHa() / highest(u).orElseThrow())
                    : 1)
        .max();
  }
}
