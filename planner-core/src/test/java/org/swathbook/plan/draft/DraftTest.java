package org.swathbook.plan.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Passes come, go and change places; the draft keeps them by date. */
class DraftTest {
  private static final Stop EARLY = new Stop(2, List.of(1, 4));
  private static final Stop LATE = new Stop(8, List.of(3));
  private static final Draft TWO = new Draft(List.of(LATE, EARLY));

  @Test
  void passesStandByDate() {
    assertThat(TWO.stops()).containsExactly(EARLY, LATE);
    assertThat(TWO.hasDate(2)).isTrue();
    assertThat(TWO.hasDate(8)).isTrue();
    assertThat(TWO.hasDate(3)).isFalse();
    assertThat(Draft.EMPTY.hasDate(2)).isFalse();
  }

  @Test
  void onePassComesIsAnotherOrGoes() {
    Stop between = new Stop(5, List.of(7));
    assertThat(TWO.with(between).stops()).containsExactly(EARLY, between, LATE);
    assertThat(TWO.replacing(0, between).stops()).containsExactly(between, LATE);
    assertThat(TWO.replacing(1, between).stops()).containsExactly(EARLY, between);
    assertThat(TWO.without(0).stops()).containsExactly(LATE);
    assertThat(TWO.without(1).stops()).containsExactly(EARLY);
    assertThat(TWO.stops()).containsExactly(EARLY, LATE);
  }

  @Test
  void itsProductsAreThoseOfAllTanks() {
    assertThat(TWO.products()).isEqualTo(3);
    assertThat(Draft.EMPTY.products()).isZero();
  }

  /** Drafts that differ in a date or in a tank have other places in the fixed order. */
  @Test
  void eachDraftHasItsPlace() {
    assertThat(List.of(TWO, TWO.without(0), TWO.without(1), TWO.replacing(0, EARLY.on(3))))
        .extracting(Draft::key)
        .doesNotHaveDuplicates()
        .doesNotContain(Draft.EMPTY.key());
    assertThat(TWO.replacing(0, EARLY.with(2)).key()).isNotEqualTo(TWO.key());
  }
}
