package org.swathbook.rules;

import java.util.List;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.Use;

/**
 * An active that the catalog offers for a pass.
 *
 * @param uses those of its uses that are open to the pass
 */
record Offer(Ingredient active, List<Use> uses) {

  Offer {
    uses = List.copyOf(uses);
  }

  /** Whether in some use of each no label keeps the other away. */
  boolean mixesWith(Offer other) {
    for (Use mine : uses) {
      for (Use theirs : other.uses) {
        if (takes(mine.terms().tank(), other.active)
            && takes(theirs.terms().tank(), active)
            && haveDropletsInCommon(mine.terms().tank(), theirs.terms().tank())) {
          return true;
        }
      }
    }
    return false;
  }

  /** A list that the catalog does not hold refuses nobody; the judgement of a tank asks for it. */
  private static boolean takes(TankTerms keeper, Ingredient partner) {
    return keeper.partners().find().map(l -> l.allows(partner.id())).orElse(true);
  }

  private static boolean haveDropletsInCommon(TankTerms a, TankTerms b) {
    return a.droplets().find().isEmpty()
        || b.droplets().find().isEmpty()
        || a.droplets().find().get().meets(b.droplets().find().get());
  }
}
