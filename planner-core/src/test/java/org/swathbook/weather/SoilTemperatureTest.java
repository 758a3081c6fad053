package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SoilTemperatureTest {

  /** A lag of a quarter a day leaves 0.75ⁿ of a step after n days. */
  @Test
  void followsAStepOfTheAir() {
    List<WeatherDay> days = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double mean = i == 0 ? 0 : 20;
      days.add(new WeatherDay(LocalDate.of(2027, 4, 1).plusDays(i), mean + 6, mean - 6, 0));
    }

    SoilTemperature model = new SoilTemperature(SoilTemperature.Parameters.BARE);
    SoilTemperature.State soil = model.before(days.get(0));
    for (int n = 0; n < 12; n++) {
      soil = model.integrate(soil, model.rates(soil, days.get(n)));
      assertThat(soil.meanC()).isCloseTo(20 * (1 - Math.pow(0.75, n)), within(1e-9));
    }
  }
}
