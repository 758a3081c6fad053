package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stull 2011, Journal of Applied Meteorology and Climatology 50: 2267–2269. */
class WetBulbTest {

  /** The worked value of the paper (from memory). */
  @Test
  void twentyDegreesAtFiftyPercent() {
    assertThat(WetBulb.stull(20, 50)).isCloseTo(13.7, within(0.005));
    assertThat(WetBulb.deltaT(20, 50)).isCloseTo(6.3, within(0.005));
  }

  /** Computed from the printed formula by another program. */
  @ParameterizedTest
  @CsvSource({
    "30,50,22.297",
    "25,60,19.503",
    "35,20,19.302",
    "10,90,8.920",
    "15,95,14.408",
    "30,30,18.368",
    "32,40,22.075"
  })
  void theFormula(double airC, double humidityPct, double expected) {
    assertThat(WetBulb.stull(airC, humidityPct)).isCloseTo(expected, within(0.001));
  }
}
