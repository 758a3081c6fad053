package org.swathbook.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.tank.LoadSplit.Way;

/** Acres cut into loads, by hand. */
class LoadSplitTest {

  private static List<Double> gallons(LoadSplit split) {
    return split.loads().stream().map(LoadSize::gallons).toList();
  }

  @Test
  void whatFitsIsOneLoad() {
    LoadSplit split = LoadSplit.of(76, 15, 1200);

    assertThat(split.way()).isEqualTo(Way.ONE);
    assertThat(split.loads()).containsExactly(new LoadSize(1140, 76));
  }

  @Test
  void aFullTankIsOneLoadAndTwoAreTwo() {
    assertThat(LoadSplit.of(80, 15, 1200).way()).isEqualTo(Way.ONE);
    LoadSplit two = LoadSplit.of(160, 15, 1200);
    assertThat(two.way()).isEqualTo(Way.FULL);
    assertThat(gallons(two)).containsExactly(1200.0, 1200.0);
    // 0.1 × 3 is a little more than 0.3 to a computer, and no fourth load.
    assertThat(LoadSplit.of(0.1 * 3, 10, 1).loads()).hasSize(3);
  }

  @Test
  void aTinyLastLoadIsSpreadOverAll() {
    LoadSplit split = LoadSplit.of(82, 15, 1200);

    assertThat(split.way()).isEqualTo(Way.EVENED);
    assertThat(split.loads()).containsExactly(new LoadSize(615, 41), new LoadSize(615, 41));
    assertThat(split.tinyRestGallons(1200)).isEqualTo(30);
  }

  @Test
  void aLastLoadOfAQuarterTankStands() {
    LoadSplit split = LoadSplit.of(100, 15, 1200);

    assertThat(split.way()).isEqualTo(Way.FULL_AND_REST);
    assertThat(gallons(split)).containsExactly(1200.0, 300.0);
    assertThat(split.loads().get(1).acres()).isCloseTo(20, within(1e-9));
    assertThat(LoadSplit.of(99.9, 15, 1200).way()).isEqualTo(Way.EVENED);
  }

  @Test
  void noLoadsOfNothingAndNotThousands() {
    assertThatThrownBy(() -> LoadSplit.of(0, 15, 1200))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("above zero, not 0.0, 15.0, 1200.0");
    assertThatThrownBy(() -> LoadSplit.of(76, 0, 1200))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("above zero, not 76.0, 0.0, 1200.0");
    assertThatThrownBy(() -> LoadSplit.of(76, 15, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("above zero, not 76.0, 15.0, 0.0");
    assertThatThrownBy(() -> new LoadSize(0, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new LoadSize(1, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> LoadSplit.of(76, Double.NaN, 1200))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> LoadSplit.of(76, 15, 0.01))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(LoadSplit.of(1000, 10, 10).loads()).hasSize(LoadSplit.MOST_LOADS);
  }
}
