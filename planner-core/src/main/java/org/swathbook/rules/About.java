package org.swathbook.rules;

import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.WeedId;

/**
 * What a finding concerns; {@code pass} counts from 0.
 *
 * @param neighbor what lies beside the field, as the book writes it: {@code vineyard NE 1500 ft}
 */
public record About(
    Optional<IngredientId> ingredient,
    Optional<ProductId> product,
    Optional<WeedId> weed,
    OptionalInt pass,
    Optional<String> neighbor) {

  public static final About PROGRAM =
      new About(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalInt.empty(),
          Optional.empty());

  // Written out, as in every key that is hashed at a start: see RuleId.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof About o
        && ingredient.equals(o.ingredient)
        && product.equals(o.product)
        && weed.equals(o.weed)
        && pass.equals(o.pass)
        && neighbor.equals(o.neighbor);
  }

  @Override
  public int hashCode() {
    int subject = 31 * (31 * ingredient.hashCode() + product.hashCode()) + weed.hashCode();
    return 31 * (31 * subject + pass.hashCode()) + neighbor.hashCode();
  }

  public About withIngredient(IngredientId id) {
    return new About(Optional.of(id), product, weed, pass, neighbor);
  }

  public About withProduct(ProductId id) {
    return new About(ingredient, Optional.of(id), weed, pass, neighbor);
  }

  public About withWeed(WeedId id) {
    return new About(ingredient, product, Optional.of(id), pass, neighbor);
  }

  public About withPass(int index) {
    return new About(ingredient, product, weed, OptionalInt.of(index), neighbor);
  }

  public About withNeighbor(String written) {
    return new About(ingredient, product, weed, pass, Optional.of(written));
  }

  public About withoutPass() {
    return new About(ingredient, product, weed, OptionalInt.empty(), neighbor);
  }
}
