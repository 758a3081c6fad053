package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WindHeightTest {

  /** FAO-56 (Allen et al. 1998), example 14, from memory: 3.2 m/s at 10 m are 2.4 m/s at 2 m. */
  @Test
  void theExampleOfFao56() {
    assertThat(WindHeight.atTwoMetres(3.2, 10)).isEqualTo(2.4, within(0.05));
  }

  /** FAO-56, annex 2, table 2.9, from memory: factors 1.000 at 2 m and 0.748 at 10 m. */
  @Test
  void theFactorsOfFao56() {
    assertThat(WindHeight.atTwoMetres(1, 2)).isEqualTo(1, within(0.0005));
    assertThat(WindHeight.atTwoMetres(1, 10)).isEqualTo(0.748, within(0.0005));
  }
}
