package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Residual;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Rate;

class FadeCurveTest {
  private static final Residual LENGTHS =
      new Residual(Rate.lbPerAcre(0.95, Basis.AI), 21, Rate.lbPerAcre(1.9, Basis.AI), 42, 12.7);

  /** The figures that go with the form for a length of 43 days. */
  @Test
  void fadesAsStatedForALengthOf43Days() {
    assertThat(100 * FadeCurve.relative(21, 43)).isCloseTo(96, within(0.5));
    assertThat(100 * FadeCurve.relative(35, 43)).isCloseTo(87, within(0.5));
    assertThat(100 * FadeCurve.relative(63, 43)).isCloseTo(61, within(0.5));
    assertThat(FadeCurve.relative(43, 43)).isEqualTo(0.8);
  }

  /**
   * Jha et al. (2015): single site 15 actives controlled 79, 70 and 54 % at 21, 35 and 63 days. The
   * fade is held to the ratio of the later figures to the first, within six points.
   */
  @Test
  void liesBesideTheFadeOfSingleSite15Actives() {
    double at21 = FadeCurve.relative(21, 43);
    assertThat(FadeCurve.relative(35, 43) / at21).isCloseTo(70.0 / 79, within(0.06));
    assertThat(FadeCurve.relative(63, 43) / at21).isCloseTo(54.0 / 79, within(0.06));
  }

  @Test
  void freshControlIsLiftedSoThatTheFirst35DaysAverageTheTable() {
    double fresh = FadeCurve.fresh(80, LENGTHS);
    double sum = 0;
    for (int d = 0; d < 35; d++) {
      sum += fresh * FadeCurve.relative(d + 0.5, 42);
    }
    assertThat(sum / 35).isCloseTo(0.80, within(1e-12));
    assertThat(FadeCurve.fresh(99, LENGTHS)).isEqualTo(0.995);
    assertThat(FadeCurve.fresh(0, LENGTHS)).isZero();
  }

  @Test
  void lengthGoesByTheLogarithmOfTheRateInsideAndInProportionBelow() {
    double low = LENGTHS.low().kgPerHa();
    assertThat(FadeCurve.lengthDays(LENGTHS, low)).isCloseTo(21, within(1e-9));
    assertThat(FadeCurve.lengthDays(LENGTHS, low * Math.sqrt(2))).isCloseTo(31.5, within(1e-9));
    assertThat(FadeCurve.lengthDays(LENGTHS, low * 2)).isEqualTo(42);
    assertThat(FadeCurve.lengthDays(LENGTHS, low * 5)).isEqualTo(42);
    assertThat(FadeCurve.lengthDays(LENGTHS, low / 2)).isCloseTo(10.5, within(1e-9));
    assertThat(FadeCurve.relative(1, FadeCurve.lengthDays(LENGTHS, 0))).isZero();
  }
}
