package org.swathbook.catalog.starter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.AdjuvantKind;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Terms;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.measure.Numbers;

/**
 * Rates of the adjuvants that the starter asks for, against what each kind goes in at. From memory,
 * as labels and trade guides have it: a surfactant works from an eighth of a percent and is not
 * asked for above half a percent; an oil goes in at half a percent to one, or by pints on land; dry
 * ammonium sulfate alone is weighed.
 */
class AdjuvantRatesTest {
  private static List<String> wrong(BiPredicate<AdjuvantKind, String> right) {
    List<String> wrong = new ArrayList<>();
    for (Ingredient i : new CatalogLoader().starter().ingredients()) {
      Stream.concat(Stream.of(i.terms()), i.uses().stream().map(Use::terms))
          .flatMap((Terms t) -> t.tank().adjuvantNeeded().find().stream())
          .flatMap(List::stream)
          .flatMap(n -> n.rates().entrySet().stream())
          .filter(r -> !right.test(r.getKey(), r.getValue()))
          .forEach(r -> wrong.add(i.id() + " " + r));
    }
    return wrong;
  }

  private static double number(String rate) {
    return Numbers.splitRange(rate).low();
  }

  @Test
  void ammoniumSulfateAloneIsWeighed() {
    assertThat(wrong((k, r) -> r.contains("lb/") == (k == AdjuvantKind.AMMONIUM_SULFATE)))
        .isEmpty();
  }

  @Test
  void aSurfactantStaysBelowTheRatesOfOils() {
    assertThat(
            wrong(
                (k, r) ->
                    k != AdjuvantKind.NONIONIC_SURFACTANT
                        || r.endsWith(" % v/v") && number(r) >= 0.125 && number(r) <= 0.5))
        .isEmpty();
  }

  @Test
  void anOilIsNotAskedForAtTheRateOfASurfactant() {
    assertThat(
            wrong(
                (k, r) ->
                    k != AdjuvantKind.CROP_OIL && k != AdjuvantKind.METHYLATED_SEED_OIL
                        || !r.endsWith("% v/v")
                        || number(r) >= 0.5))
        .isEmpty();
  }
}
