package org.swathbook.rules;

import java.util.Optional;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Terms;
import org.swathbook.catalog.Use;
import org.swathbook.program.ActiveDose;
import org.swathbook.program.Dose;
import org.swathbook.tank.Partner;

/**
 * An active of a pass with the use that it is made under.
 *
 * @param use empty when the label lists none
 */
public record ActiveUse(Dose dose, ActiveDose active, Optional<Use> use) {

  public Ingredient ingredient() {
    return active.ingredient();
  }

  /** Terms of the label: of the use where it is known, else of the ingredient. */
  public Terms terms() {
    return use.map(Use::terms).orElse(ingredient().terms());
  }

  /** Whether both are poured from one product, under one label. */
  public boolean isOfOneProductWith(ActiveUse other) {
    return dose.product().id().equals(other.dose.product().id());
  }

  /** The same as tanks know it. */
  public Partner partner() {
    return new Partner(ingredient(), terms());
  }
}
