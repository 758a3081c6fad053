package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.MonthDay;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.catalog.DegreeDayMethod;
import org.swathbook.catalog.Emergence;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.ThermalClock;
import org.swathbook.testing.Fixtures;

class EmergenceCurveTest {

  static Emergence emergence(double at10, double at50, double at90) {
    return new Emergence(
        new ThermalClock(DegreeDayMethod.AVERAGE, 9, OptionalDouble.empty()),
        MonthDay.of(1, 1),
        at10,
        at50,
        at90,
        Optional.empty(),
        OptionalDouble.empty(),
        new Source("default, test"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"AMAPA", "AMATU", "AMBTR", "ABUTH", "KCHSC", "SETFA", "SETVI", "SORVU"})
  void passesThroughItsThreePoints(String eppo) {
    Emergence e = Fixtures.weed(eppo).emergence();
    EmergenceCurve curve = new EmergenceCurve(e);
    double main = e.tail().isPresent() ? 1 - e.tail().get().share() : 1;

    assertThat(curve.isWeibull()).isTrue();
    assertThat(curve.at(e.at10())).isCloseTo(0.10 * main, within(1e-9));
    assertThat(curve.at(e.at50())).isCloseTo(0.50 * main, within(1e-9));
    assertThat(curve.at(e.at90())).isCloseTo(0.90 * main, within(1e-9));
  }

  /** Known parameters come back from the points that they make. */
  @ParameterizedTest
  @CsvSource({"20, 100, 0.7", "0, 500, 2.2", "150, 300, 1", "400, 900, 3.1"})
  void findsTheParametersAgain(double lag, double scale, double shape) {
    double[] x = new double[3];
    double[] shares = {0.1, 0.5, 0.9};
    for (int i = 0; i < 3; i++) {
      x[i] = lag + scale * Math.pow(-Math.log(1 - shares[i]), 1 / shape);
    }

    EmergenceCurve curve = new EmergenceCurve(emergence(x[0], x[1], x[2]));

    assertThat(curve.lag()).isCloseTo(lag, within(1e-5));
    assertThat(curve.scale()).isCloseTo(scale, within(1e-5));
    assertThat(curve.shape()).isCloseTo(shape, within(1e-7));
  }

  @Test
  void earlySpeciesHaveAShapeBelowOneAndLateOnesAbove() {
    assertThat(shape("KCHSC")).isLessThan(1);
    assertThat(shape("AMBTR")).isLessThan(1);
    assertThat(shape("AMATU")).isGreaterThan(2);
  }

  private static double shape(String eppo) {
    return new EmergenceCurve(Fixtures.weed(eppo).emergence()).shape();
  }

  /** A twentieth of the kochia straggles in evenly from 300, its 90 % point, to 1400 °F-days. */
  @Test
  void theTailIsEvenAndEndsWhereItShould() {
    EmergenceCurve kochia = new EmergenceCurve(Fixtures.weed("KCHSC").emergence());
    EmergenceCurve main = new EmergenceCurve(emergence(10 / 1.8, 60 / 1.8, 300 / 1.8));

    assertThat(kochia.at(850 / 1.8)).isCloseTo(0.95 * main.at(850 / 1.8) + 0.025, within(1e-9));
    assertThat(kochia.at(1400 / 1.8)).isCloseTo(0.95 * main.at(1400 / 1.8) + 0.05, within(1e-9));
    assertThat(kochia.at(3000 / 1.8)).isCloseTo(1, within(1e-4));
  }

  @Test
  void pointsThatNoSuchCurveMeetsAreJoinedByLines() {
    EmergenceCurve curve = new EmergenceCurve(emergence(100, 800, 900));

    assertThat(curve.isWeibull()).isFalse();
    assertThat(curve.at(50)).isCloseTo(0.05, within(1e-12));
    assertThat(curve.at(100)).isCloseTo(0.10, within(1e-12));
    assertThat(curve.at(450)).isCloseTo(0.30, within(1e-12));
    assertThat(curve.at(900)).isCloseTo(0.90, within(1e-12));
    assertThat(curve.at(925)).isCloseTo(1, within(1e-12));
  }
}
