package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.catalog.Movement;
import org.swathbook.measure.Basis;
import org.swathbook.program.Carrier;
import org.swathbook.testing.IngredientBuilder;

/** What minerals of the water tie up, and from how much on. */
class HardWaterTest {

  private static Carrier water(OptionalDouble caCo3, OptionalDouble iron) {
    return new Carrier(Carrier.Liquid.WATER, caCo3, OptionalDouble.empty(), iron);
  }

  @Test
  void ironIsMuchAboveFive() {
    OptionalDouble untested = OptionalDouble.empty();
    assertThat(HardWater.hasMuchIron(water(untested, untested))).isFalse();
    assertThat(HardWater.hasMuchIron(water(untested, OptionalDouble.of(5)))).isFalse();
    assertThat(HardWater.hasMuchIron(water(untested, OptionalDouble.of(5.1)))).isTrue();
  }

  /**
   * Guides state hardness as CaCO3 and call water hard for weak acids from 150 ppm on (Purdue
   * University, from memory); water of 320 ppm is very hard in every scale (USGS: above 180).
   */
  @Test
  void hardIsAboveAHundredAndFiftyAsCarbonate() {
    OptionalDouble untested = OptionalDouble.empty();
    assertThat(HardWater.isHard(water(untested, untested))).isFalse();
    assertThat(HardWater.isHard(water(OptionalDouble.of(150), untested))).isFalse();
    assertThat(HardWater.isHard(water(OptionalDouble.of(320), untested))).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "1, EC, true",
    "9, SL, true",
    "10, SL, true",
    "4, SL, true",
    "4, EC, false",
    "14, SL, false",
    "2, SL, false"
  })
  void tiedUpAreSitesAndSalts(int site, String formulation, boolean tied) {
    IngredientBuilder through =
        IngredientBuilder.of("testactive", site, Movement.SYSTEMIC, Basis.AE);
    assertThat(HardWater.tiesUp(through.build(), formulation)).isFalse();
    assertThat(HardWater.tiesUp(through.foliar(1).build(), formulation)).isEqualTo(tied);
  }
}
