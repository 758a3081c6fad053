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

  /** Calcium is 40.08 of the 100.09 of its carbonate: 150 ppm of it are 375 ppm as CaCO3. */
  @Test
  void calciumIsMuchAboveAHundredAndFifty() {
    OptionalDouble untested = OptionalDouble.empty();
    assertThat(HardWater.hasMuchCalcium(water(untested, untested))).isFalse();
    assertThat(HardWater.hasMuchCalcium(water(OptionalDouble.of(370), untested))).isFalse();
    assertThat(HardWater.hasMuchCalcium(water(OptionalDouble.of(380), untested))).isTrue();
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
