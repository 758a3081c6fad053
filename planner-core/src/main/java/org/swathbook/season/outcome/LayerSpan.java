package org.swathbook.season.outcome;

import java.util.List;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.WeedId;

/**
 * The residual layer of one pass on one weed in one weather year, as days of the trace: from
 * activation to the last day of joint control at or above the house threshold. Only layers of at
 * least 7 days.
 */
public record LayerSpan(
    int pass, WeedId weed, List<IngredientId> ingredients, int fromDay, int toDay) {

  public LayerSpan {
    ingredients = List.copyOf(ingredients);
  }

  public int days() {
    return toDay - fromDay + 1;
  }
}
