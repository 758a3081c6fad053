package org.swathbook.rules;

import java.util.Optional;
import java.util.OptionalInt;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.WeedId;

/** What a finding concerns; {@code pass} counts from 0. */
public record About(
    Optional<IngredientId> ingredient,
    Optional<ProductId> product,
    Optional<WeedId> weed,
    OptionalInt pass) {

  public static final About PROGRAM =
      new About(Optional.empty(), Optional.empty(), Optional.empty(), OptionalInt.empty());

  public About withIngredient(IngredientId id) {
    return new About(Optional.of(id), product, weed, pass);
  }

  public About withProduct(ProductId id) {
    return new About(ingredient, Optional.of(id), weed, pass);
  }

  public About withWeed(WeedId id) {
    return new About(ingredient, product, Optional.of(id), pass);
  }

  public About withPass(int index) {
    return new About(ingredient, product, weed, OptionalInt.of(index));
  }

  public About withoutPass() {
    return new About(ingredient, product, weed, OptionalInt.empty());
  }
}
