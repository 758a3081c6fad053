package org.swathbook.catalog.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.SmallCatalog;
import org.swathbook.catalog.file.WrittenCatalog;

class WhereUsedTest {
  private final WrittenCatalog catalog = new SmallCatalog().written();

  private List<String> of(EntryKind kind, String id) {
    return WhereUsed.of(catalog.catalog(), catalog.find(kind, id).orElseThrow());
  }

  @Test
  void anIngredientInProductsListsAndPairs() {
    assertThat(of(EntryKind.INGREDIENT, "glyphosate"))
        .containsExactly(
            "products: glyphosate-4.5sl",
            "partner lists: metribuzin",
            "interactions: glyphosate with site 5 (antagonism)");
  }

  /** Named by its site only. */
  @Test
  void anIngredientOfASiteThatAPairNames() {
    assertThat(of(EntryKind.INGREDIENT, "metribuzin"))
        .containsExactly(
            "products: metribuzin-75wg", "interactions: glyphosate with site 5 (antagonism)");
  }

  @Test
  void aCropInUsesAndIntervals() {
    assertThat(of(EntryKind.CROP, "soybean"))
        .containsExactly(
            "uses: glyphosate, metribuzin",
            "refused by: metribuzin",
            "next-crop intervals: metribuzin");
    assertThat(of(EntryKind.WEED, "amapa")).containsExactly("ratings: 2");
    assertThat(of(EntryKind.PRODUCT, "glyphosate-4.5sl")).isEmpty();
  }
}
