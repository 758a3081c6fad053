package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JointActionTest {

  /**
   * Colby (1967), Weeds 15: 20-22: expected control 100 - (100 - X)(100 - Y)(100 - Z)/100^2, worked
   * by hand from the formula.
   */
  @ParameterizedTest
  @CsvSource({
    "60, 50, 0, 80.0",
    "85, 70, 0, 95.5",
    "95, 0, 0, 95.0",
    "40, 30, 0, 58.0",
    "60, 50, 40, 88.0",
    "90, 80, 30, 98.6",
    "100, 35, 70, 100.0",
    "0, 0, 0, 0.0"
  })
  void expectedControlIsColbys(double x, double y, double z, double expected) {
    double control = 100 * (1 - JointAction.survival(x / 100, y / 100, z / 100));
    assertThat(control).isCloseTo(expected, within(1e-9));
  }

  @Test
  void missesAreSharedByAllPartners() {
    double joint = JointAction.survival(0.8, 0.8, 0.8);
    assertThat(1 - joint).isCloseTo(0.992, within(1e-12));
    assertThat(1 - JointAction.withMisses(0.03, joint)).isCloseTo(0.97 * 0.992, within(1e-12));
    assertThat(JointAction.withMisses(0.03, 1)).isEqualTo(1);
    assertThat(JointAction.withMisses(0.03, 0)).isEqualTo(0.03);
  }
}
