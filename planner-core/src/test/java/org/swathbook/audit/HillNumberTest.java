package org.swathbook.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Definitions: Hill 1973 and Jost 2006 (from memory); the worked figures are ours. */
class HillNumberTest {
  /** Uses 15:1, 14:2, 9:1, 10:1: H = 1.332179, Σ p² = 7/25. */
  @Test
  void fiveUsesOfFourSites() {
    List<Double> uses = List.of(1.0, 2.0, 1.0, 1.0);
    assertThat(HillNumber.shannon(uses)).isCloseTo(3.789291, within(1e-6));
    assertThat(HillNumber.inverseSimpson(uses)).isCloseTo(25.0 / 7, within(1e-12));
  }

  /** Controls 15: 80; 14: 70 and 60; 9: 5 (resistant); 10: 90 %, weighed by -ln(1 - control). */
  @Test
  void aSiteThatFailsHardlyCounts() {
    List<Double> kill =
        List.of(
            -Math.log(0.20), -Math.log(0.30) - Math.log(0.40), -Math.log(0.95), -Math.log(0.10));
    assertThat(HillNumber.shannon(kill)).isCloseTo(3.086803, within(1e-6));
    assertThat(HillNumber.inverseSimpson(kill)).isCloseTo(2.987001, within(1e-6));
  }

  @Test
  void equalSitesCountInFullAndNothingCountsForNothing() {
    for (int n = 1; n <= 8; n++) {
      assertThat(HillNumber.shannon(Collections.nCopies(n, 0.3))).isCloseTo(n, within(1e-12));
      assertThat(HillNumber.inverseSimpson(Collections.nCopies(n, 0.3)))
          .isCloseTo(n, within(1e-12));
    }
    assertThat(HillNumber.shannon(List.of(0.0))).isZero();
    assertThat(HillNumber.inverseSimpson(List.of())).isZero();
    assertThatThrownBy(() -> HillNumber.shannon(List.of(-1.0)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
