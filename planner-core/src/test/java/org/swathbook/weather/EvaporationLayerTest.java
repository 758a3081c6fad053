package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** FAO Irrigation and Drainage Paper 56 (Allen et al. 1998), chapter 7. */
class EvaporationLayerTest {
  private final EvaporationLayer siltLoam = new EvaporationLayer(0.29, 0.15, 9);

  /**
   * Equation 73 with mid values of field capacity and wilting point stays inside the total
   * evaporable water that Table 19 prints for a layer of 0.10 m (ranges from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "sand, 0.12, 0.045, 6, 12",
    "loamy sand, 0.15, 0.07, 9, 14",
    "sandy loam, 0.23, 0.11, 15, 20",
    "loam, 0.25, 0.12, 16, 22",
    "silt loam, 0.29, 0.15, 18, 25",
    "silt, 0.32, 0.17, 22, 26",
    "silty clay loam, 0.33, 0.20, 22, 27",
    "silty clay, 0.36, 0.22, 22, 28",
    "clay, 0.36, 0.22, 22, 29"
  })
  void totalEvaporableWaterIsThatOfTable19(
      String texture, double capacity, double wilting, double least, double most) {
    assertThat(new EvaporationLayer(capacity, wilting, 8).totalEvaporableMm())
        .as(texture)
        .isBetween(least, most);
  }

  @Test
  void evaporationKeepsUpUntilTheReadilyEvaporableWaterIsGone() {
    assertThat(siltLoam.totalEvaporableMm()).isCloseTo(21.5, within(1e-9));
    assertThat(siltLoam.reduction(0)).isEqualTo(1);
    assertThat(siltLoam.reduction(9)).isEqualTo(1);
    assertThat(siltLoam.reduction(15.25)).as("half way").isCloseTo(0.5, within(1e-9));
    assertThat(siltLoam.reduction(21.5)).isZero();
  }

  /** Wet soil loses 1.15 of the reference; the second day starts with less than REW and goes on. */
  @Test
  void oneDayByHand() {
    assertThat(siltLoam.nextDepletion(0, 0, 5)).isCloseTo(5.75, within(1e-9));
    assertThat(siltLoam.nextDepletion(12, 4, 5))
        .as("8 mm after rain")
        .isCloseTo(13.75, within(1e-9));
    assertThat(siltLoam.nextDepletion(15.25, 0, 5)).isCloseTo(18.125, within(1e-9));
    assertThat(siltLoam.nextDepletion(3, 50, 0)).as("the surplus drains").isZero();
  }

  @Test
  void relativeWaterRunsFromFieldCapacityToHalfTheWiltingPoint() {
    assertThat(siltLoam.relativeWater(0)).isEqualTo(1);
    assertThat(siltLoam.relativeWater(21.5)).isCloseTo(0.075 / 0.29, within(1e-9));
  }

  @Test
  void aDrySummerDriesAndAStormRefills() {
    List<WeatherDay> days = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      days.add(new WeatherDay(LocalDate.of(2027, 6, 1).plusDays(i), 30, 16, i == 30 ? 60 : 0));
    }

    double[] water = siltLoam.relativeWater(days, 40.7);

    assertThat(water[29]).isLessThan(0.32);
    assertThat(water[30]).isGreaterThan(0.7);
    assertThat(water[39]).isLessThan(water[30]);
  }
}
