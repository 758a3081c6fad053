package org.swathbook.trials;

import java.util.OptionalDouble;
import org.swathbook.book.Field;
import org.swathbook.book.SoilRates;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;

/** What a label would have in the tank where a table prints no rate: the middle of its range. */
final class TypicalRates {
  private TypicalRates() {}

  /** kg/ha for the field's crop, soil and part of its life, else of any use; empty when unknown. */
  static OptionalDouble kgPerHa(Ingredient active, Field field, Position.Phase phase) {
    OptionalDouble here = OptionalDouble.empty();
    OptionalDouble inCrop = OptionalDouble.empty();
    OptionalDouble any = OptionalDouble.empty();
    for (Use use : active.uses()) {
      OptionalDouble middle = middle(use, field);
      if (use.refused() || use.isHarvestAid() || middle.isEmpty()) {
        continue;
      }
      if (use.isFor(field.crop()) && use.isIn(phase)) {
        here = greater(here, middle.getAsDouble());
      }
      if (use.isFor(field.crop())) {
        inCrop = greater(inCrop, middle.getAsDouble());
      }
      any = greater(any, middle.getAsDouble());
    }
    return here.isPresent() ? here : inCrop.isPresent() ? inCrop : any;
  }

  private static OptionalDouble greater(OptionalDouble so, double value) {
    return OptionalDouble.of(Math.max(so.orElse(0), value));
  }

  private static OptionalDouble middle(Use use, Field field) {
    return SoilRates.of(use, field) instanceof SoilRates.Allowed a
        ? OptionalDouble.of((a.range().low().kgPerHa() + a.range().high().kgPerHa()) / 2)
        : OptionalDouble.empty();
  }
}
