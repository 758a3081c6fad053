package org.swathbook.escapes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShareIntervalTest {

  /** Newcombe 1998, Statistics in Medicine 17, 857-872, Table I, exact method (from memory). */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2527, 0.3676",
    "15, 148, 0.0578, 0.1617",
    "0, 20, 0.0000, 0.1684",
    "1, 29, 0.0009, 0.1776"
  })
  void publishedIntervals(int hits, int all, double low, double high) {
    ShareInterval s = ShareInterval.of(hits, all);
    assertThat(s.low()).isCloseTo(low, within(0.00005));
    assertThat(s.high()).isCloseTo(high, within(0.00005));
  }

  /**
   * Of none, or of all, the interval has a closed form: 1 - 0.025^(1/n), Clopper & Pearson 1934.
   */
  @Test
  void noneAndAll() {
    assertThat(ShareInterval.of(0, 10).high()).isCloseTo(1 - Math.pow(0.025, 0.1), within(1e-9));
    assertThat(ShareInterval.of(10, 10).low()).isCloseTo(Math.pow(0.025, 0.1), within(1e-9));
    assertThat(ShareInterval.of(10, 10).high()).isEqualTo(1);
    assertThat(ShareInterval.of(0, 10).low()).isZero();
  }

  @Test
  void nothingCountedIsNoShare() {
    assertThatThrownBy(() -> ShareInterval.of(0, 0)).isInstanceOf(IllegalArgumentException.class);
  }
}
