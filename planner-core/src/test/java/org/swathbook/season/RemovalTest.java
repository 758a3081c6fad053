package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.season.loss.LateRemoval;
import org.swathbook.season.loss.Removal;
import org.swathbook.testing.Fixtures;

class RemovalTest {

  /** Knezevic et al. (2003): soybean in 30, 15 and 7.5 in. rows must be clean by V1, V2, V3. */
  @ParameterizedTest
  @CsvSource({"30, 1", "15, 2", "7.5, 3"})
  void fivePercentAtTheCriticalTimeAndHalfFourStagesOn(double inches, int stage) {
    Removal r = Removal.of(Fixtures.soybean(), OptionalDouble.of(inches * 2.54));
    assertThat(r.share(stage, false)).isCloseTo(0.05, within(1e-9));
    assertThat(r.share(stage + 4, false)).isCloseTo(0.5, within(1e-9));
    assertThat(r.share(stage, true)).isLessThanOrEqualTo(r.share(stage, false));
  }

  /** The same stages: on time then, late a tenth of a leaf on. */
  @ParameterizedTest
  @CsvSource({"30, 1", "15, 2", "7.5, 3"})
  void lateIsPastTheCriticalTime(double inches, int stage) {
    OptionalDouble row = OptionalDouble.of(inches * 2.54);
    assertThat(LateRemoval.isLate(Fixtures.soybean(), row, stage, false)).isFalse();
    assertThat(LateRemoval.isLate(Fixtures.soybean(), row, stage + 0.1, false)).isTrue();
  }

  @Test
  void rowsThatNobodyStatedTakeTheEarliestStage() {
    Removal r = Removal.of(Fixtures.soybean(), OptionalDouble.empty());
    assertThat(r.share(1, false)).isCloseTo(0.05, within(1e-9));
  }

  @Test
  void costsNothingBeforeTheCropIsUp() {
    Kernel kernel = Kernels.of("ND-1");
    SeasonTrace trace = kernel.traces().years().get(0);
    PreparedPass before =
        kernel.prepare(Sprays.mix("glyphosate", 1), trace.bookDateOf(trace.plantingDay() - 20));
    assertThat(before.view(0).costBare).isZero();
    PreparedPass late =
        kernel.prepare(Sprays.mix("glyphosate", 1), trace.bookDateOf(trace.emergenceDay() + 25));
    assertThat(late.view(0).costBare).isGreaterThan(late.view(0).costAfterResidual);
    assertThat(late.view(0).costAfterResidual).isPositive();
  }
}
