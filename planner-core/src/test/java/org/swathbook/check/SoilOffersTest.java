package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Site;
import org.swathbook.growth.TraceSet;
import org.swathbook.rules.TankOffers;

/** Soil sites that the demo book's house can ask of a first layer; it names two. */
final class SoilOffersTest {

  /**
   * What holds the weed by itself decides, after traits, soil and listed resistance.
   *
   * <ul>
   *   <li>ND-2, giant ragweed in corn: atrazine holds it, and isoxaflutole, mesotrione and
   *       saflufenacil in part. Of site 2 only cloransulam would, which is not for corn.
   *   <li>OB-1, the same in soybean, where it resists site 2: metribuzin in part, and nothing else.
   *   <li>OB-2, shattercane in corn: no site holds more of it than 60 %.
   *   <li>Palmer amaranth, velvetleaf and kochia meet many.
   * </ul>
   *
   * <p>Source: responses before emergence, from memory, as in the catalog.
   */
  @ParameterizedTest
  @CsvSource({
    "ND-2, AMBTR, 1",
    "OB-1, AMBTR, 1",
    "OB-2, SORVU, 1",
    "ND-1, AMAPA, 2",
    "ND-4, ABUTH, 2",
    "QH-1, AMAPA, 2",
    "QH-3, KCHSC, 2"
  })
  void asManyAsHoldTheWeedByThemselves(String field, String weed, int asked) {
    assertThat(asked(field, weed, 2)).isEqualTo(asked);
  }

  @ParameterizedTest
  @CsvSource({"ND-2, AMBTR, 5", "OB-1, AMBTR, ", "OB-2, SORVU, "})
  void theSitesThemselves(String field, String weed, String sites) {
    var named = new TreeSet<Site>();
    if (sites != null) {
      named.add(Site.find(sites).orElseThrow());
    }
    assertThat(offers(field).soilSites(pressure(field, weed))).isEqualTo(named);
  }

  @Test
  void aPassWithoutALayerOwesNothing() {
    assertThat(asked("ND-2", "AMBTR", 0)).isZero();
  }

  private static int asked(String field, String weed, int wanted) {
    return offers(field).soilSitesAsked(pressure(field, weed), wanted);
  }

  private static TankOffers offers(String fieldId) {
    return new TankOffers(DemoFields.BOOK, traces(fieldId));
  }

  private static TraceSet traces(String fieldId) {
    Field field = DemoFields.field(fieldId);
    return DemoFields.traces(field);
  }

  private static WeedPressure pressure(String fieldId, String weedId) {
    return traces(fieldId).weeds().stream()
        .filter(w -> w.weed().id().value().equals(weedId))
        .findFirst()
        .orElseThrow();
  }
}
