package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.swathbook.catalog.Emergence;

class EmergenceCurveProperties {

  private static Emergence emergence(double at10, double to50, double to90) {
    return EmergenceCurveTest.emergence(at10, at10 + to50, at10 + to50 + to90);
  }

  @Property
  void anyRisingPointsAreMetAndTheCurveRisesBetweenNoneAndAll(
      @ForAll @DoubleRange(min = 1, max = 600) double at10,
      @ForAll @DoubleRange(min = 1, max = 1500) double to50,
      @ForAll @DoubleRange(min = 1, max = 1500) double to90,
      @ForAll @DoubleRange(min = 0, max = 4000) double heat,
      @ForAll @DoubleRange(min = 0, max = 500) double more) {
    Emergence e = emergence(at10, to50, to90);
    EmergenceCurve curve = new EmergenceCurve(e);

    assertThat(curve.at(e.at10())).isCloseTo(0.1, within(1e-6));
    assertThat(curve.at(e.at50())).isCloseTo(0.5, within(1e-6));
    assertThat(curve.at(e.at90())).isCloseTo(0.9, within(1e-6));
    assertThat(curve.at(heat)).isBetween(0.0, 1.0);
    assertThat(curve.at(heat + more)).isGreaterThanOrEqualTo(curve.at(heat));
  }
}
