package org.swathbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.swathbook.measure.Basis;

/** An amount and its limit are told apart by their digits. */
class SayTest {
  @Test
  void aLimitAndWhatIsAboveItDoNotReadTheSame() {
    assertThat(Say.lbBeside(0.0314, 0.0313, Basis.AI)).isEqualTo("0.0314 lb ai/acre");
    assertThat(Say.lbBeside(0.0313, 0.0314, Basis.AI)).isEqualTo("0.0313 lb ai/acre");
    assertThat(Say.lbBeside(2.54, 2.48, Basis.AI)).isEqualTo("2.54 lb ai/acre");
    assertThat(Say.lbBeside(1.23449, 1.2341, Basis.AE)).isEqualTo("1.2345 lb ae/acre");
  }

  @Test
  void ofAmountsThatAreTheSameThreeDecimalsAndMoreAreEnough() {
    assertThat(Say.lbBeside(1.5, 1.5, Basis.AI)).isEqualTo("1.5 lb ai/acre");
  }
}
