package org.swathbook.catalog.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.file.SmallCatalog;

class DiffTest {
  private static final String GLYPHOSATE = "ingredients/glyphosate.yaml";

  private static List<String> words(SmallCatalog before, SmallCatalog after) {
    return Diff.changes(before.written(), after.written()).stream()
        .map(c -> c.kind() + " " + c.entry() + ": " + c.words())
        .toList();
  }

  @Test
  void nothingChangesInACopy() {
    assertThat(words(new SmallCatalog(), new SmallCatalog())).isEmpty();
  }

  @Test
  void remarksInAFileAndItsLayoutAreNoChange() {
    assertThat(
            words(
                new SmallCatalog(),
                new SmallCatalog().with(GLYPHOSATE, "site: 9", "# moved\nsite:    9   # as ever")))
        .isEmpty();
  }

  @Test
  void aChangedLimitIsSaidWithItsUse() {
    SmallCatalog after =
        new SmallCatalog()
            .with(GLYPHOSATE, "rate: 0.75-1.13 lb ae/acre", "rate: 0.75-1.0 lb ae/acre")
            .with(GLYPHOSATE, "carrier: {min: 5 gal/acre}\n", "")
            .with(GLYPHOSATE, "    trait: none\n", "    trait: none\n    applications: 2\n");
    assertThat(words(new SmallCatalog(), after))
        .containsExactlyInAnyOrder(
            "ingredient glyphosate: least spray volume is no longer stated, was 5 gal/acre",
            "ingredient glyphosate: any, burndown: most applications is now stated, 2",
            "ingredient glyphosate: soybean, post, with glyphosate: rate was 0.75-1.13 lb ae/acre, is"
                + " now 0.75-1.0 lb ae/acre");
  }

  @Test
  void aBetterSourceForTheSameValueIsAChange() {
    SmallCatalog after =
        new SmallCatalog()
            .with(
                GLYPHOSATE,
                "  - {for: [all], source: from memory}",
                "  - {for: [all], source: from memory}\n  - {for: [carrier], source: a label}");
    assertThat(words(new SmallCatalog(), after))
        .containsExactly(
            "ingredient glyphosate: source of the least spray volume was from memory, is now a label");
  }

  @Test
  void entriesAndUsesComeAndGo() {
    SmallCatalog after =
        new SmallCatalog()
            .without("products/metribuzin-75wg.yaml")
            .file(
                "products/metribuzin-4sc.yaml",
                new SmallCatalog()
                    .text("products/metribuzin-75wg.yaml")
                    .replace("75wg", "4sc")
                    .replace("75 %", "4 lb/gal")
                    .replace("WG", "SC")
                    .replace("oz weight/acre", "pt/acre"))
            .with(
                GLYPHOSATE,
                "  - crop: any\n    position: [burndown]",
                "  - crop: any\n    position: [burndown, fall]");
    assertThat(words(new SmallCatalog(), after))
        .containsExactlyInAnyOrder(
            "product metribuzin-4sc: the product is new",
            "product metribuzin-75wg: the product is gone",
            "ingredient glyphosate: the use any, burndown is gone",
            "ingredient glyphosate: the use any, burndown or fall is new");
  }

  @Test
  void ratingsAndInteractionsAreCompared() {
    SmallCatalog after =
        new SmallCatalog()
            .with(
                "responses.csv", "AMAPA,glyphosate,post,95,90,99", "AMAPA,glyphosate,post,60,50,70")
            .with("interactions.yaml", "loses: 10-30 %", "loses: 10-40 %");
    assertThat(words(new SmallCatalog(), after))
        .containsExactly(
            "rating glyphosate: control of AMAPA, post was 95 (90-99) %, rated at 4.0 in, high confidence – from memory, is now 60"
                + " (50-70) %, rated at 4.0 in, high confidence – from memory",
            "interaction glyphosate with site 5: effect is no longer stated, was antagonism on"
                + " broadleaf, 20 % of glyphosate's control lost",
            "interaction glyphosate with site 5: effect is now stated, antagonism on broadleaf, 25 %"
                + " of glyphosate's control lost");
  }
}
