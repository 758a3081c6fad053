package org.swathbook.catalog.starter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.source.CsvRow;

/**
 * Every active of the starter has the site of action of {@code site-of-action.csv}: the numbers of
 * the harmonised list of HRAC and WSSA (2020), from memory, and the sources beside them where one
 * prints the number too.
 */
class SiteOfActionTest {

  @Test
  void everyIngredientHasItsNumber() {
    Map<String, String> published = new TreeMap<>();
    for (CsvRow row :
        PublishedTables.rows("site-of-action.csv", "ingredient", "number", "source")) {
      assertThat(row.text("source")).isNotEmpty();
      published.put(row.text("ingredient"), row.text("number"));
    }
    Catalog starter = new CatalogLoader().starter();
    Map<String, String> ours = new TreeMap<>();
    for (Ingredient i : starter.ingredients()) {
      ours.put(i.name(), i.site().toString());
    }
    assertThat(ours).isEqualTo(published);
  }

  /**
   * The PNW Weed Management Handbook still prints 7 for linuron, 8 for EPTC and 20 for dichlobenil;
   * the list of 2020 has 5, 15 and 29 for them. The other pairs are from memory.
   */
  @ParameterizedTest
  @CsvSource({"7, 5", "8, 15", "16, 15", "17, 0", "20, 29", "21, 29", "5, 5", "15, 15", "29, 29"})
  void olderNumbersMeanTheCurrentOnes(String written, int current) {
    assertThat(Site.find(written)).isEqualTo(Optional.of(new Site(current)));
  }
}
