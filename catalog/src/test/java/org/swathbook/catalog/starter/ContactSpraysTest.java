package org.swathbook.catalog.starter;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.catalog.DropletClass;
import org.swathbook.catalog.TankTerms.DropletRange;
import org.swathbook.catalog.file.CatalogLoader;

/**
 * What kills only where it lands needs many droplets: medium to coarse for glufosinate (Johnson,
 * Legleiter & Loux, Purdue and Ohio State Universities), and for paraquat the same (from memory).
 */
class ContactSpraysTest {
  @ParameterizedTest
  @ValueSource(strings = {"paraquat", "glufosinate-ammonium"})
  void areNotMadeOfTheCoarsestDroplets(String active) {
    DropletRange range =
        new CatalogLoader()
            .starter()
            .findIngredient(active)
            .orElseThrow()
            .terms()
            .tank()
            .droplets()
            .find()
            .orElseThrow();

    assertThat(range).isEqualTo(new DropletRange(DropletClass.MEDIUM, DropletClass.COARSE));
  }
}
