package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Position;
import org.swathbook.testing.Fixtures;

class PhasesTest {
  private static final SeasonTrace TRACE =
      TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-1")).years().get(0);

  private static int day(String date) {
    return TRACE.dayOf(LocalDate.parse(date));
  }

  @Test
  void phasesFollowTheCrop() {
    assertThat(Phases.of(TRACE, day("2027-03-20"))).isEqualTo(Position.Phase.BEFORE_EMERGENCE);
    assertThat(Phases.of(TRACE, TRACE.emergenceDay() - 1))
        .isEqualTo(Position.Phase.BEFORE_EMERGENCE);
    assertThat(Phases.of(TRACE, TRACE.emergenceDay())).isEqualTo(Position.Phase.IN_CROP);
    assertThat(Phases.of(TRACE, TRACE.harvestDay())).isEqualTo(Position.Phase.IN_CROP);
    assertThat(Phases.of(TRACE, TRACE.harvestDay() + 1)).isEqualTo(Position.Phase.AFTER_HARVEST);
  }

  /** A fall burndown belongs to the next season, and no crop stands then. */
  @Test
  void theAutumnBeforeASpringCropIsStubble() {
    assertThat(Phases.of(TRACE, day("2026-11-03"))).isEqualTo(Position.Phase.AFTER_HARVEST);
    assertThat(Phases.of(TRACE, day("2026-12-31"))).isEqualTo(Position.Phase.AFTER_HARVEST);
    assertThat(Phases.of(TRACE, day("2027-01-01"))).isEqualTo(Position.Phase.BEFORE_EMERGENCE);
  }

  @Test
  void positionsTurnWithPlantingAndEmergence() {
    int planted = TRACE.plantingDay();

    assertThat(Phases.positions(TRACE, planted - 1))
        .containsExactly(Position.BURNDOWN, Position.PREPLANT);
    assertThat(Phases.positions(TRACE, planted))
        .containsExactly(Position.BURNDOWN, Position.PREPLANT, Position.PRE);
    assertThat(Phases.positions(TRACE, planted + 1))
        .containsExactly(Position.BURNDOWN, Position.PRE);
    assertThat(Phases.positions(TRACE, TRACE.emergenceDay()))
        .containsExactly(Position.POST, Position.LAY_BY, Position.HARVEST_AID);
    assertThat(Phases.positions(TRACE, TRACE.harvestDay() + 1))
        .containsExactly(Position.STUBBLE, Position.FALL);
  }
}
