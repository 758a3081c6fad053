package org.swathbook.catalog.starter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.Terms;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.file.CatalogLoader;

/** The rate of a need is that of the kind it names first, so a weight names a dry one first. */
class AdjuvantRatesTest {

  @Test
  void aRateByWeightIsThatOfAmmoniumSulfate() {
    List<String> wrong = new ArrayList<>();
    for (Ingredient i : new CatalogLoader().starter().ingredients()) {
      Stream.concat(Stream.of(i.terms()), i.uses().stream().map(Use::terms))
          .flatMap((Terms t) -> t.tank().adjuvantNeeded().find().stream())
          .flatMap(List::stream)
          .filter(n -> n.rate().filter(r -> r.contains(" lb/")).isPresent())
          .filter(n -> first(n) != AdjuvantKind.AMMONIUM_SULFATE)
          .forEach(n -> wrong.add(i.id() + " " + n));
    }
    assertThat(wrong).isEmpty();
  }

  private static AdjuvantKind first(TankTerms.AdjuvantNeed need) {
    return need.anyOf().iterator().next();
  }
}
