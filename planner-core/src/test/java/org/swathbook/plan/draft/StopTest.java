package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A tank holds each option once, rising, however it was filled. */
class StopTest {
  private static final Stop STOP = new Stop(3, List.of(2, 5, 9));

  @Test
  void whatIsNotRisingIsSortedAndHeldOnce() {
    assertThat(new Stop(3, List.of(9, 2, 5, 2)).options()).containsExactly(2, 5, 9);
    assertThat(new Stop(3, List.of(2, 2)).options()).containsExactly(2);
    assertThat(new Stop(3, List.of(5, 2)).options()).containsExactly(2, 5);
  }

  @Test
  void anOptionMoreStandsInItsPlace() {
    assertThat(STOP.with(1)).isEqualTo(new Stop(3, List.of(1, 2, 5, 9)));
    assertThat(STOP.with(6)).isEqualTo(new Stop(3, List.of(2, 5, 6, 9)));
    assertThat(STOP.with(12)).isEqualTo(new Stop(3, List.of(2, 5, 9, 12)));
    assertThat(STOP.with(5)).isEqualTo(STOP);
    assertThat(STOP.with(9)).isEqualTo(STOP);
  }

  @Test
  void anOptionLessLeavesTheOthers() {
    assertThat(STOP.without(5)).isEqualTo(new Stop(3, List.of(2, 9)));
    assertThat(STOP.without(4)).isEqualTo(STOP);
  }

  @Test
  void itHoldsWhatIsInIt() {
    assertThat(List.of(2, 5, 9)).allMatch(STOP::holds);
    assertThat(List.of(0, 3, 7, 10)).noneMatch(STOP::holds);
  }

  @Test
  void onAnotherDateItIsTheSameTank() {
    assertThat(STOP.on(7)).isEqualTo(new Stop(7, List.of(2, 5, 9)));
  }
}
