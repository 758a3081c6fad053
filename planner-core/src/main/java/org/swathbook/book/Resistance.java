package org.swathbook.book;

import java.util.Optional;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;

/**
 * Plants of a weed that a site, or one ingredient only, no longer controls.
 *
 * @param site the site; empty when only an ingredient is listed
 * @param share share of the plants, 0 to 1
 * @param status confirmed, assumed or suspected, as written
 */
public record Resistance(
    Optional<Site> site, Optional<IngredientId> ingredient, double share, String status) {

  public Resistance {
    if (site.isPresent() == ingredient.isPresent()) {
      throw new IllegalArgumentException(
          "a resistance is to a site or to an ingredient, one of them");
    }
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share is between 0 and 1, not " + share);
    }
  }

  /** Whether it concerns an active. */
  public boolean concerns(org.swathbook.catalog.Ingredient active) {
    return site.filter(s -> s.equals(active.site())).isPresent()
        || ingredient.filter(i -> i.equals(active.id())).isPresent();
  }
}
