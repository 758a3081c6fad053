package org.swathbook.plan.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Field;
import org.swathbook.plan.DemoCopy;

/** ND-1 is planted on 11 May 2027: the grid goes from 11 April to 16 July. */
class DateGridTest {
  private static final Field FIELD = DemoCopy.inMemory().findField("ND-1").orElseThrow();
  private static final DateGrid GRID = new DateGrid(FIELD, 3);

  @Test
  void itGoesFromThirtyDaysBeforePlantingToSixtySixAfter() {
    assertThat(FIELD.plantDate()).isEqualTo(LocalDate.of(2027, 5, 11));
    assertThat(GRID.size()).isEqualTo(97);
    assertThat(GRID.date(0)).isEqualTo(LocalDate.of(2027, 4, 11));
    assertThat(GRID.date(30)).isEqualTo(LocalDate.of(2027, 5, 11));
    assertThat(GRID.date(96)).isEqualTo(LocalDate.of(2027, 7, 16));
    assertThat(GRID.daysFromPlanting(0)).isEqualTo(-30);
    assertThat(GRID.daysFromPlanting(96)).isEqualTo(66);
  }

  @Test
  void aDayOutsideFallsOnTheNearestEnd() {
    assertThat(GRID.placeOf(-30)).isZero();
    assertThat(GRID.placeOf(-31)).isZero();
    assertThat(GRID.placeOf(0)).isEqualTo(30);
    assertThat(GRID.placeOf(66)).isEqualTo(96);
    assertThat(GRID.placeOf(80)).isEqualTo(96);
  }

  @Test
  void theFirstPlaceFromADayOn() {
    assertThat(GRID.firstFrom(LocalDate.of(2026, 11, 1))).isZero();
    assertThat(GRID.firstFrom(LocalDate.of(2027, 4, 11))).isZero();
    assertThat(GRID.firstFrom(LocalDate.of(2027, 4, 12))).isEqualTo(1);
    assertThat(GRID.firstFrom(LocalDate.of(2027, 7, 16))).isEqualTo(96);
    assertThat(GRID.firstFrom(LocalDate.of(2027, 7, 17))).isEqualTo(97);
    assertThat(GRID.firstFrom(LocalDate.of(2027, 10, 1))).isEqualTo(97);
  }

  /** A day, two, and one to four steps of three days. */
  @Test
  void aPassMovesByDaysAndByHouseSteps() {
    assertThat(GRID.near(30)).containsExactly(18, 21, 24, 27, 28, 29, 31, 32, 33, 36, 39, 42);
    assertThat(GRID.near(0)).containsExactly(1, 2, 3, 6, 9, 12);
    assertThat(GRID.near(95)).containsExactly(83, 86, 89, 92, 93, 94, 96);
    assertThat(GRID.near(30, 1)).containsExactly(27, 28, 29, 31, 32, 33);
    assertThat(GRID.near(-2, 1)).as("from off the grid").containsExactly(0, 1);
  }
}
