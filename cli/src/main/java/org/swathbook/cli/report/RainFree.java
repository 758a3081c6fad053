package org.swathbook.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.swathbook.catalog.Foliar;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Stated;
import org.swathbook.check.JudgedMix;
import org.swathbook.rules.ActiveUse;

/**
 * How long an active needs on leaves before rain.
 *
 * @param hours after spraying, by its label; empty when they are not known
 */
public record RainFree(Ingredient ingredient, OptionalDouble hours) {

  /** Of the actives of a tank that work through leaves, or may; each active once. */
  public static List<RainFree> of(JudgedMix judged) {
    List<RainFree> out = new ArrayList<>();
    for (ActiveUse a : judged.facts().actives()) {
      Stated<Foliar> foliar = a.terms().foliar();
      if (foliar.find().isPresent() || foliar.isUnknown()) {
        RainFree one =
            new RainFree(
                a.ingredient(),
                foliar
                    .find()
                    .flatMap(f -> f.rainfastHours().find())
                    .map(OptionalDouble::of)
                    .orElse(OptionalDouble.empty()));
        if (out.stream().noneMatch(one::isOf)) {
          out.add(one);
        }
      }
    }
    return out;
  }

  private boolean isOf(RainFree other) {
    return ingredient.id().equals(other.ingredient.id()) && hours.equals(other.hours);
  }
}
