package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Terms;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.program.Adjuvant;

/** Needs of tanks from the starter catalog; what labels ask for is named with its source there. */
class TankNeedsTest {
  private static final Catalog STARTER = new CatalogLoader().starter();

  private static List<Terms> of(String... names) {
    return Arrays.stream(names).map(n -> STARTER.findIngredient(n).orElseThrow().terms()).toList();
  }

  @Test
  void ammoniumSulfateOfTwoPartnersGoesInOnce() {
    TankNeeds needs = TankNeeds.of(of("glyphosate", "glufosinate-ammonium"));

    assertThat(needs.adjuvants())
        .containsOnlyOnce(new Adjuvant("ammonium-sulfate", "8.5 lb/100 gal"));
    assertThat(needs.gallonsPerAcre().orElseThrow()).isEqualTo(15);
  }

  @Test
  void anOilThatAPartnerRefusesIsNotPutIn() {
    assertThat(TankNeeds.of(of("clethodim")).adjuvants())
        .extracting(Adjuvant::kind)
        .contains("crop-oil");
    assertThat(TankNeeds.of(of("clethodim", "glufosinate-ammonium")).adjuvants())
        .extracting(Adjuvant::kind)
        .doesNotContain("crop-oil", "methylated-seed-oil");
  }

  @Test
  void theLargestLeastVolumeGoverns() {
    double together = TankNeeds.of(of("paraquat", "metribuzin")).gallonsPerAcre().orElseThrow();
    double one = TankNeeds.of(of("paraquat")).gallonsPerAcre().orElseThrow();
    double other = TankNeeds.of(of("metribuzin")).gallonsPerAcre().orElseThrow();

    assertThat(together).isEqualTo(Math.max(one, other));
  }

  @Test
  void anEmptyTankNeedsNothing() {
    assertThat(TankNeeds.of(List.of()).adjuvants()).isEmpty();
    assertThat(TankNeeds.of(List.of()).gallonsPerAcre()).isEmpty();
  }
}
