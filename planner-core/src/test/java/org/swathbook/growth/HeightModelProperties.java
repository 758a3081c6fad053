package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.swathbook.catalog.HeightCurve;
import org.swathbook.catalog.Source;

class HeightModelProperties {

  private static HeightModel model(double base, double slope) {
    return new HeightModel(
        new HeightCurve(base, slope, 0.03, 90, 300, new Source("default, test")));
  }

  @Property
  void olderIsNeverShorter(
      @ForAll @DoubleRange(min = 0, max = 12) double base,
      @ForAll @DoubleRange(min = 0.03, max = 0.3) double slope,
      @ForAll @DoubleRange(min = 0, max = 3000) double age,
      @ForAll @DoubleRange(min = 0, max = 500) double more) {
    HeightModel h = model(base, slope);

    assertThat(h.heightCm(age + more)).isBetween(h.heightCm(age), h.maxCm());
  }

  @Property
  void ageAtIsTheInverseBelowTheTop(
      @ForAll @DoubleRange(min = 0, max = 12) double base,
      @ForAll @DoubleRange(min = 0.03, max = 0.3) double slope,
      @ForAll @DoubleRange(min = 0.01, max = 299) double cm) {
    HeightModel h = model(base, slope);

    assertThat(h.heightCm(h.ageAt(cm))).isCloseTo(cm, within(1e-6));
  }

  @Property
  void heightIsTheInverseOfAge(
      @ForAll @DoubleRange(min = 0, max = 12) double base,
      @ForAll @DoubleRange(min = 1, max = 600) double age) {
    HeightModel h = model(base, 0.15);

    assertThat(h.ageAt(h.heightCm(age))).isCloseTo(age, within(1e-6));
  }
}
