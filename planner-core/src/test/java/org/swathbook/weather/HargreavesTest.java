package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** FAO Irrigation and Drainage Paper 56 (Allen et al. 1998). */
class HargreavesTest {

  /** Example 8, page 80: 20° south, 3 September: 32.2 MJ m⁻² day⁻¹. */
  @Test
  void radiationOfExample8() {
    assertThat(Hargreaves.extraterrestrialRadiation(-20, 246)).isCloseTo(32.2, within(0.05));
  }

  /** Example 20, page 121: Lyon, 45.72° north, 15 July: 40.55 (printed value from memory). */
  @Test
  void radiationOfExample20() {
    assertThat(Hargreaves.extraterrestrialRadiation(45.72, 196)).isCloseTo(40.55, within(0.02));
  }

  /** The same example: 14.8 and 26.6 °C give 5.0 mm a day (printed value from memory). */
  @Test
  void referenceEvapotranspirationOfExample20() {
    double mm = Hargreaves.referenceMm(26.6, 14.8, 40.55);

    assertThat(mm).isCloseTo(5.0, within(0.05));
    assertThat(mm).as("equation 52 by hand").isCloseTo(5.03, within(0.005));
  }

  @Test
  void aDayOfTheYearComesFromItsDate() {
    WeatherDay day = new WeatherDay(LocalDate.of(2027, 7, 15), 26.6, 14.8, 0);

    assertThat(Hargreaves.referenceMm(day, 45.72)).isCloseTo(5.03, within(0.01));
  }

  @ParameterizedTest
  @CsvSource({"70,355,0", "70,172,43"})
  void polarNightAndMidnightSun(double latitude, int dayOfYear, double expected) {
    assertThat(Hargreaves.extraterrestrialRadiation(latitude, dayOfYear))
        .isCloseTo(expected, within(1.5));
  }

  @Test
  void bitterColdEvaporatesNothing() {
    assertThat(Hargreaves.referenceMm(-20, -30, 15)).isZero();
  }
}
