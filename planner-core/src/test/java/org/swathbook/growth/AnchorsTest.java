package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.Anchor;
import org.swathbook.testing.Fixtures;

class AnchorsTest {
  private static final TraceSet ND1 = TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-1"));

  @Test
  void datesAndDaysFromPlantingAreTakenAsTheyAre() {
    assertThat(Anchors.resolve(new Anchor.OnDate(LocalDate.of(2027, 6, 8)), ND1, 0.9))
        .isEqualTo("2027-06-08");
    assertThat(Anchors.resolve(new Anchor.FromPlanting(0), ND1, 0.9)).isEqualTo("2027-05-11");
    assertThat(Anchors.resolve(new Anchor.FromPlanting(-14), ND1, 0.9)).isEqualTo("2027-04-27");
  }

  @Test
  void aStageIsPlannedForTheLowerMedianOfTheYears() {
    int v3 = Fixtures.soybean().findStage("V3").orElseThrow();
    List<LocalDate> dates =
        ND1.years().stream().map(t -> t.bookDateOf(t.dayOfStage(v3))).sorted().toList();

    LocalDate planned = Anchors.resolve(new Anchor.AtStage("v3"), ND1, 0.9);

    assertThat(planned).isEqualTo(dates.get(4));
    assertThat(dates).hasSize(10);
  }

  @Test
  void aWeedHeightComesLaterForTallerPlantsAndForLargerShares() {
    WeedId palmer = WeedId.of("AMAPA");
    LocalDate three = Anchors.resolve(new Anchor.WhenWeedIs(palmer, 3 * 2.54), ND1, 0.9);
    LocalDate six = Anchors.resolve(new Anchor.WhenWeedIs(palmer, 6 * 2.54), ND1, 0.9);
    LocalDate tallest = Anchors.resolve(new Anchor.WhenWeedIs(palmer, 3 * 2.54), ND1, 1);

    assertThat(three).isBefore(six);
    assertThat(tallest).isBeforeOrEqualTo(three);
  }

  @Test
  void theHeightIsReachedOnThatDayAndNotBefore() {
    WeedId palmer = WeedId.of("AMAPA");
    SeasonTrace trace = ND1.years().get(3);
    TraceSet one = new TraceSet(ND1.field(), ND1.crop(), ND1.weeds(), List.of(trace));
    int day = trace.dayOf(Anchors.resolve(new Anchor.WhenWeedIs(palmer, 10), one, 0.9));

    assertThat(StandingSize.percentileCm(trace, 0, day, 0.9).orElseThrow())
        .isGreaterThanOrEqualTo(10);
    for (int d = 0; d < day; d++) {
      assertThat(StandingSize.percentileCm(trace, 0, d, 0.9).orElse(0)).isLessThan(10);
    }
  }

  @Test
  void whatNeverComesIsEmptyAndSaysSo() {
    assertThat(Anchors.find(new Anchor.WhenWeedIs(WeedId.of("AMAPA"), 400), ND1, 0.9)).isEmpty();
    assertThatThrownBy(
            () -> Anchors.resolve(new Anchor.WhenWeedIs(WeedId.of("AMAPA"), 400), ND1, 0.9))
        .hasMessageContaining("does not come in field ND-1 in most weather years");
  }

  @Test
  void unknownStagesAndWeedsAreNamed() {
    assertThatThrownBy(() -> Anchors.resolve(new Anchor.AtStage("V99"), ND1, 0.9))
        .hasMessageContaining("V99 is no stage of soybean; it has VE, VC, V1");
    assertThatThrownBy(
            () -> Anchors.resolve(new Anchor.WhenWeedIs(WeedId.of("KCHSC"), 5), ND1, 0.9))
        .hasMessageContaining("KCHSC is no weed of field ND-1");
  }
}
