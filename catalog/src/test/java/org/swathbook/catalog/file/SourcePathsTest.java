package org.swathbook.catalog.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.Use;

/** Which line of {@code sources} a value takes. */
class SourcePathsTest {
  private static final String METRIBUZIN = "ingredients/metribuzin.yaml";
  private static final String ALL = "- {for: [all], source: from memory}";
  private static final String SECOND_PRE =
      """
        - crop: soybean
          position: [pre]
          rate: 0.25 lb ai/acre
          cap: {amount: 0.5 lb ai/acre, per: season}
      usesComplete: yes
      """;

  private static Use use(SmallCatalog catalog, int number) {
    Catalog read = catalog.load();
    return read.ingredient(new IngredientId("metribuzin")).uses().get(number - 1);
  }

  /** Metribuzin with a third use of the same crop and position as the first. */
  private static SmallCatalog alike(String lines) {
    return new SmallCatalog()
        .with(METRIBUZIN, "usesComplete: yes\n", SECOND_PRE)
        .with(METRIBUZIN, ALL, ALL + lines);
  }

  private static String source(Stated<?> value) {
    return value.findSource().map(Source::text).orElse("unknown");
  }

  @Test
  void theNumberOfAUseTellsTwoApartThatAreOfOneCropAndPosition() {
    SmallCatalog catalog = alike("\n  - {for: [uses.3.rate], source: a table}");
    assertThat(source(use(catalog, 1).rates())).isEqualTo("a label");
    assertThat(source(use(catalog, 3).rates())).isEqualTo("a table");
    assertThat(source(use(catalog, 3).caps())).isEqualTo("a label");
  }

  @Test
  void aNumberIsAsLongAsCropAndPosition() {
    SmallCatalog first = alike("\n  - {for: [uses.3], source: a table}");
    assertThat(source(use(first, 3).rates())).as("the first of two as long").isEqualTo("a table");
    SmallCatalog longer =
        alike(
            "\n  - {for: [uses.3], source: a table}\n"
                + "  - {for: [uses.soybean.pre.rate], source: a paper}");
    assertThat(source(use(longer, 3).rates())).isEqualTo("a paper");
    assertThat(source(use(longer, 3).caps())).isEqualTo("a table");
  }

  @Test
  void aNumberThatNoUseHasLeadsToNothing() {
    assertThat(alike("\n  - {for: [uses.4], source: a table}").problems())
        .singleElement()
        .asString()
        .contains("the path 'uses.4' leads to nothing that stands in this file");
    assertThat(alike("\n  - {for: [uses.0.rate], source: a table}").problems()).hasSize(1);
    assertThat(alike("\n  - {for: [uses.2.rate], source: a table}").problems())
        .as("the second use is refused and has no rate")
        .hasSize(1);
  }

  @Test
  void aKeyMayHoldDots() {
    SmallCatalog catalog =
        new SmallCatalog()
            .with("crops/corn.yaml", "V6: 607", "V6: 607, \"Feekes 10.5\": 700")
            .with(
                "crops/corn.yaml",
                ALL,
                ALL + "\n  - {for: [stages.at.Feekes 10.5, heights.Feekes 10.5], source: a paper}")
            .with("crops/corn.yaml", "canopy:", "heights: {V3: 6 in, Feekes 10.5: 30 in}\ncanopy:");
    Crop corn = catalog.load().findCrop("corn").orElseThrow();
    assertThat(corn.sources().get("stages.at.Feekes 10.5")).isEqualTo(new Source("a paper"));
    assertThat(corn.sources().get("heights.Feekes 10.5")).isEqualTo(new Source("a paper"));
    assertThat(corn.sources().get("stages.at.V6")).isEqualTo(Source.FROM_MEMORY);
  }
}
