package org.swathbook.program;

import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.TankTerms.Rinse;

/**
 * A load that the sprayer held before others.
 *
 * @param held its actives
 * @param cleaned how the sprayer was cleaned right after it; empty when not said
 */
public record EarlierLoad(List<IngredientId> held, Optional<Rinse> cleaned) {

  public EarlierLoad {
    held = List.copyOf(held);
  }
}
