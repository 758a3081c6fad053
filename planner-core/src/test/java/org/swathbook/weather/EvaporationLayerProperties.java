package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class EvaporationLayerProperties {
  private final EvaporationLayer layer =
      new EvaporationLayer(EvaporationLayer.Parameters.of(0.25, 0.12, 9));

  private double next(double depletionMm, double rainMm, double referenceMm) {
    EvaporationLayer.State state = new EvaporationLayer.State(depletionMm);
    return layer.integrate(state, layer.rates(state, rainMm, referenceMm)).depletionMm();
  }

  @Property
  void depletionStaysBetweenFullAndEmpty(
      @ForAll @DoubleRange(min = 0, max = 19) double depletion,
      @ForAll @DoubleRange(min = 0, max = 80) double rain,
      @ForAll @DoubleRange(min = 0, max = 12) double reference) {
    assertThat(next(depletion, rain, reference)).isBetween(0.0, layer.totalEvaporableMm());
  }

  @Property
  void moreRainNeverLeavesItDrier(
      @ForAll @DoubleRange(min = 0, max = 19) double depletion,
      @ForAll @DoubleRange(min = 0, max = 80) double rain,
      @ForAll @DoubleRange(min = 0, max = 40) double more,
      @ForAll @DoubleRange(min = 0, max = 8) double reference) {
    assertThat(next(depletion, rain + more, reference))
        .isLessThanOrEqualTo(next(depletion, rain, reference) + 1e-9);
  }
}
