package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.catalog.HeightCurve;
import org.swathbook.catalog.Source;
import org.swathbook.testing.Fixtures;

class HeightModelTest {

  private static HeightModel of(String eppo) {
    return new HeightModel(Fixtures.weed(eppo).height());
  }

  private static HeightModel curve(double baseC) {
    return new HeightModel(
        new HeightCurve(baseC, 0.16, 0.03, 90, 1e6, new Source("default, test")));
  }

  /** Horak and Loughin 2000, Weed Science 48: 347–355: cm per °C-day in two years. */
  @ParameterizedTest
  @CsvSource({"AMAPA, 0.18, 0.21", "AMATU, 0.11, 0.16"})
  void growthInTheStraightPartIsAsMeasured(String eppo, double least, double most) {
    HeightModel h = of(eppo);

    assertThat((h.heightCm(900) - h.heightCm(500)) / 400).isBetween(least, most);
  }

  /** Four inches in ten to fourteen warm days (common practice, no source): 20 to 24 °C. */
  @ParameterizedTest
  @ValueSource(doubles = {20, 21, 22, 23, 24})
  void palmerAmaranthReachesFourInchesInTenToFourteenWarmDays(double meanC) {
    double days = of("AMAPA").ageAt(4 * 2.54) / (meanC - 10);

    assertThat(Math.ceil(days)).isBetween(10.0, 14.0);
  }

  /** A 2012 Michigan plot went from 3 to 7 in within 5 days (Sprague, quoted in a farm paper). */
  @Test
  void palmerAmaranthGoesFromThreeToSevenInchesInAboutFiveHotDays() {
    HeightModel h = of("AMAPA");

    double days = (h.ageAt(7 * 2.54) - h.ageAt(3 * 2.54)) / (25.0 - 10);

    assertThat(days).isCloseTo(5, within(1.0));
  }

  /** Weeds on a base of 4 °C grow as those on 10 °C do when it is 20 °C, and faster in the cool. */
  @Test
  void earlySpeciesGrowAlikeAtTwentyDegreesAndBetterInApril() {
    HeightModel early = curve(4);
    HeightModel late = curve(10);

    for (int day = 1; day <= 40; day++) {
      assertThat(early.heightCm(day * (20.0 - 4)))
          .isCloseTo(late.heightCm(day * (20.0 - 10)), within(1e-9));
    }
    assertThat(early.heightCm(28 * (12.0 - 4))).isGreaterThan(2 * late.heightCm(28 * (12.0 - 10)));
  }

  @Test
  void startsAtTheGroundAndStopsAtTheTop() {
    HeightModel h = of("SETVI");

    assertThat(h.heightCm(0)).isZero();
    assertThat(h.heightCm(-5)).isZero();
    assertThat(h.heightCm(1e5)).isEqualTo(h.maxCm()).isEqualTo(60);
  }
}
