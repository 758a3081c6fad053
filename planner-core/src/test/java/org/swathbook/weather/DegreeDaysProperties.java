package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class DegreeDaysProperties {
  private static final double BASE = 10;
  private static final double CEILING = 30;

  private static double[] all(double tmax, double tmin) {
    return new double[] {
      DegreeDays.average(tmax, tmin, BASE),
      DegreeDays.clamped(tmax, tmin, BASE, CEILING),
      DegreeDays.singleSine(tmax, tmin, BASE),
      DegreeDays.singleSine(tmax, tmin, BASE, CEILING)
    };
  }

  @Property
  void neverNegativeAndNeverMoreThanTheCeilingAllows(
      @ForAll @DoubleRange(min = -40, max = 50) double tmin,
      @ForAll @DoubleRange(min = 0, max = 30) double range) {
    double[] dd = all(tmin + range, tmin);

    for (double x : dd) {
      assertThat(x).isNotNegative();
    }
    assertThat(dd[1]).isLessThanOrEqualTo(CEILING - BASE);
    assertThat(dd[3]).isLessThanOrEqualTo(CEILING - BASE + 1e-9);
  }

  @Property
  void aWarmerDayNeverBringsLess(
      @ForAll @DoubleRange(min = -40, max = 50) double tmin,
      @ForAll @DoubleRange(min = 0, max = 30) double range,
      @ForAll @DoubleRange(min = 0, max = 20) double warmerNight,
      @ForAll @DoubleRange(min = 0, max = 20) double warmerDay) {
    double[] cool = all(tmin + range, tmin);
    double high = tmin + range + warmerNight + warmerDay;
    double[] warm = all(high, tmin + warmerNight);

    for (int i = 0; i < cool.length; i++) {
      assertThat(warm[i]).isGreaterThanOrEqualTo(cool[i] - 1e-9);
    }
  }

  /** A curve that dips below the base has more above it than its mean says. */
  @Property
  void theSineIsNeverBelowTheAverage(
      @ForAll @DoubleRange(min = -40, max = 50) double tmin,
      @ForAll @DoubleRange(min = 0, max = 30) double range) {
    assertThat(DegreeDays.singleSine(tmin + range, tmin, BASE))
        .isGreaterThanOrEqualTo(DegreeDays.average(tmin + range, tmin, BASE) - 1e-9);
  }

  /** The closed form against the area itself, summed over a fine grid of the day. */
  @Property(tries = 50)
  void theSineIsTheAreaUnderTheCurve(
      @ForAll @DoubleRange(min = -20, max = 40) double tmin,
      @ForAll @DoubleRange(min = 0.1, max = 30) double range) {
    int steps = 20_000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double t = tmin + range / 2 + range / 2 * Math.sin(2 * Math.PI * (i + 0.5) / steps);
      sum += Math.max(0, Math.min(t, CEILING) - BASE) / steps;
    }

    assertThat(DegreeDays.singleSine(tmin + range, tmin, BASE, CEILING))
        .isCloseTo(sum, within(1e-4));
  }

  @Property
  void unitsOnlyScale(
      @ForAll @DoubleRange(min = -40, max = 50) double tmin,
      @ForAll @DoubleRange(min = 0, max = 30) double range) {
    double fMax = (tmin + range) * 1.8 + 32;
    double fMin = tmin * 1.8 + 32;

    assertThat(DegreeDays.clamped(fMax, fMin, 50, 86))
        .isCloseTo(1.8 * DegreeDays.clamped(tmin + range, tmin, 10, 30), within(1e-9));
    assertThat(DegreeDays.singleSine(fMax, fMin, 50, 86))
        .isCloseTo(1.8 * DegreeDays.singleSine(tmin + range, tmin, 10, 30), within(1e-9));
  }
}
