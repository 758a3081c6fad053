package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What lives through a pass, and by which class of height a plant is looked up. */
class SetbackTest {

  /** Contact actives burn back to a fifth, others to six tenths (default, ours). */
  @ParameterizedTest
  @CsvSource({"NONE, 0, 1, 0", "SYSTEMIC, 1, 0.6, 16", "CONTACT, 2, 0.2, 32"})
  void keepsAndPausesAsStated(Setback setback, int rank, double kept, double degreeDays) {
    assertThat(setback.heightKept()).isCloseTo(kept, within(1e-12));
    assertThat(setback.pauseDegreeDays()).isCloseTo(degreeDays, within(1e-12));
    assertThat(setback.rank()).isEqualTo(rank);
    assertThat(Setback.ofRank(rank)).isEqualTo(setback);
  }

  /** Half inches: 1.27 cm and its multiples, the nearest of them, none above 48 in. */
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "0.63, 0",
    "0.64, 1",
    "1.27, 1",
    "10.16, 8",
    "121.92, 96",
    "122.6, 96",
    "400, 96"
  })
  void aHeightBelongsToTheNearestHalfInch(double cm, int heightClass) {
    assertThat(HeightClasses.of(cm)).isEqualTo(heightClass);
  }

  @Test
  void aClassStandsForItsHeight() {
    assertThat(HeightClasses.heightCm(8)).isCloseTo(4 * 2.54, within(1e-12));
    assertThat(HeightClasses.heightCm(HeightClasses.COUNT - 1)).isCloseTo(121.92, within(1e-9));
  }
}
