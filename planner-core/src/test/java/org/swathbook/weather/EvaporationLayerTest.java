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
  private final EvaporationLayer siltLoam = layer(0.29, 0.15, 9);

  private static EvaporationLayer layer(double capacity, double wilting, double readilyMm) {
    return new EvaporationLayer(EvaporationLayer.Parameters.of(capacity, wilting, readilyMm));
  }

  /** Depletion at the end of a day, mm. */
  private double next(double depletionMm, double rainMm, double referenceMm) {
    EvaporationLayer.State state = new EvaporationLayer.State(depletionMm);
    return siltLoam.integrate(state, siltLoam.rates(state, rainMm, referenceMm)).depletionMm();
  }

  private double relativeWater(double depletionMm) {
    return siltLoam.relativeWater(new EvaporationLayer.State(depletionMm));
  }

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
    assertThat(layer(capacity, wilting, 8).totalEvaporableMm()).as(texture).isBetween(least, most);
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
    assertThat(next(0, 0, 5)).isCloseTo(5.75, within(1e-9));
    assertThat(next(12, 4, 5)).as("8 mm after rain").isCloseTo(13.75, within(1e-9));
    assertThat(next(15.25, 0, 5)).isCloseTo(18.125, within(1e-9));
    assertThat(next(3, 50, 0)).as("the surplus drains").isZero();
  }

  @Test
  void relativeWaterRunsFromFieldCapacityToHalfTheWiltingPoint() {
    assertThat(relativeWater(0)).isEqualTo(1);
    assertThat(relativeWater(21.5)).isCloseTo(0.075 / 0.29, within(1e-9));
  }

  @Test
  void aDrySummerDriesAndAStormRefills() {
    List<WeatherDay> days = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      days.add(new WeatherDay(LocalDate.of(2027, 6, 1).plusDays(i), 30, 16, i == 30 ? 60 : 0));
    }

    double[] water = new double[days.size()];
    EvaporationLayer.State state = siltLoam.before();
    for (int d = 0; d < water.length; d++) {
      WeatherDay day = days.get(d);
      double referenceMm = Hargreaves.referenceMm(day, 40.7);
      state = siltLoam.integrate(state, siltLoam.rates(state, day.rainMm(), referenceMm));
      water[d] = siltLoam.relativeWater(state);
    }

    assertThat(water[29]).isLessThan(0.32);
    assertThat(water[30]).isGreaterThan(0.7);
    assertThat(water[39]).isLessThan(water[30]);
  }
}
