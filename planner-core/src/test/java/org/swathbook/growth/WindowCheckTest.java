package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.catalog.Position.BURNDOWN;
import static org.swathbook.catalog.Position.FALL;
import static org.swathbook.catalog.Position.POST;
import static org.swathbook.catalog.Position.PRE;
import static org.swathbook.catalog.Position.PREPLANT;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Use;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.UseBuilder;

class WindowCheckTest {
  private static final TraceSet ND1 = TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-1"));
  private static final TraceSet ND2 = TraceBuilder.build(Fixtures.book(), Fixtures.field("ND-2"));
  private static final SeasonTrace SOYBEAN = ND1.years().get(2);
  private static final SeasonTrace CORN = ND2.years().get(2);

  private static int cornStage(String stage) {
    return CORN.dayOfStage(Fixtures.corn().findStage(stage).orElseThrow());
  }

  private static boolean inside(UseBuilder use, SeasonTrace trace, int day) {
    return WindowCheck.check(use.build(), trace, day).inside();
  }

  @Test
  void throughAStageLastsUntilTheNextOneIsReached() {
    UseBuilder use = UseBuilder.of("corn", POST).through("VE", "V8").noCropHeight();

    assertThat(inside(use, CORN, CORN.emergenceDay() - 1)).isFalse();
    assertThat(inside(use, CORN, CORN.emergenceDay())).isTrue();
    assertThat(inside(use, CORN, cornStage("V8"))).isTrue();
    assertThat(inside(use, CORN, cornStage("V9") - 1)).isTrue();
    assertThat(inside(use, CORN, cornStage("V9"))).isFalse();
  }

  @Test
  void beforeAStageEndsTheDayBeforeItIsReached() {
    int r1 = SOYBEAN.dayOfStage(Fixtures.soybean().findStage("R1").orElseThrow());
    UseBuilder use = UseBuilder.of("soybean", POST).before("emergence", "R1").noCropHeight();

    assertThat(inside(use, SOYBEAN, r1 - 1)).isTrue();
    assertThat(inside(use, SOYBEAN, r1)).isFalse();
  }

  @Test
  void stageAndHeightAreComparedApartAndTheFirstReachedBinds() {
    Use use =
        UseBuilder.of("corn", POST).through("VE", "V8").cropHeight(Limit.below(12 * 2.54)).build();
    int v5 = cornStage("V5");

    WindowCheck.Answer before = WindowCheck.check(use, CORN, v5 - 1);
    WindowCheck.Answer at = WindowCheck.check(use, CORN, v5);

    assertThat(CORN.cropHeightCm(v5)).as("V5 is 12 in.").isGreaterThanOrEqualTo(12 * 2.54);
    assertThat(before.inside()).isTrue();
    assertThat(at.inside()).isFalse();
    assertThat(at.byStage()).isTrue();
    assertThat(at.byHeight()).isFalse();
    assertThat(at.byPosition()).isTrue();
  }

  @Test
  void soilUsesEndWhenTheCropIsUp() {
    UseBuilder pre = UseBuilder.of("corn", PRE).before("", "V2");
    UseBuilder preplant = UseBuilder.of("corn", PREPLANT).through("-30", "");
    UseBuilder burndown = UseBuilder.ofAnyCrop(BURNDOWN).noTiming();

    assertThat(inside(pre, CORN, CORN.plantingDay() - 1)).isFalse();
    assertThat(inside(pre, CORN, CORN.plantingDay())).isTrue();
    assertThat(inside(pre, CORN, CORN.emergenceDay() - 1)).isTrue();
    assertThat(inside(pre, CORN, CORN.emergenceDay())).isFalse();
    assertThat(inside(preplant, CORN, CORN.plantingDay() - 30)).isTrue();
    assertThat(inside(preplant, CORN, CORN.plantingDay() - 31)).isFalse();
    assertThat(inside(preplant, CORN, CORN.plantingDay() + 1)).isFalse();
    assertThat(inside(burndown, CORN, CORN.emergenceDay() - 1)).isTrue();
    assertThat(inside(burndown, CORN, CORN.emergenceDay())).isFalse();
  }

  @Test
  void daysFromPlantingAndBeforeHarvestAndDatesAreDays() {
    UseBuilder threeDays = UseBuilder.of("corn", PRE).through("", "+3");
    UseBuilder harvest = UseBuilder.of("corn", POST).through("VE", "harvest-60").noCropHeight();
    UseBuilder june = UseBuilder.of("corn", POST).through("06-01", "06-12").noCropHeight();

    assertThat(inside(threeDays, CORN, CORN.plantingDay() + 3)).isTrue();
    assertThat(inside(threeDays, CORN, CORN.plantingDay() + 4)).isFalse();
    assertThat(inside(harvest, CORN, CORN.harvestDay() - 60)).isTrue();
    assertThat(inside(harvest, CORN, CORN.harvestDay() - 59)).isFalse();
    assertThat(inside(june, CORN, CORN.dayOf(LocalDate.of(2027, 5, 31)))).isFalse();
    assertThat(inside(june, CORN, CORN.dayOf(LocalDate.of(2027, 6, 1)))).isTrue();
    assertThat(inside(june, CORN, CORN.dayOf(LocalDate.of(2027, 6, 12)))).isTrue();
    assertThat(inside(june, CORN, CORN.dayOf(LocalDate.of(2027, 6, 13)))).isFalse();
  }

  @Test
  void stubbleNeedsNoTiming() {
    UseBuilder fall = UseBuilder.ofAnyCrop(FALL).noTiming();

    assertThat(inside(fall, CORN, CORN.harvestDay() + 5)).isTrue();
    assertThat(inside(fall, CORN, CORN.dayOf(LocalDate.of(2026, 11, 5)))).isTrue();
    assertThat(inside(fall, CORN, CORN.harvestDay())).isFalse();
  }

  @Test
  void whatIsUnknownIsNamedWhereItMatters() {
    Use nothingSaid = UseBuilder.of("corn", POST, PRE).build();

    WindowCheck.Answer inCrop = WindowCheck.check(nothingSaid, CORN, cornStage("V3"));
    WindowCheck.Answer before = WindowCheck.check(nothingSaid, CORN, CORN.plantingDay());

    assertThat(inCrop.inside()).isTrue();
    assertThat(inCrop.unknown()).containsExactly("timing", "crop height");
    assertThat(before.unknown()).as("no crop, no height").containsExactly("timing");
  }

  @Test
  void aStageThatTheCropDoesNotHaveIsUnknownNotOpen() {
    WindowCheck.Answer answer =
        WindowCheck.check(
            UseBuilder.of("corn", POST).through("VE", "boot").noCropHeight().build(),
            CORN,
            cornStage("V3"));

    assertThat(answer.unknown()).containsExactly("day on which corn reaches boot");
  }

  @Test
  void daysOutsideTheYearAreOutside() {
    UseBuilder use = UseBuilder.of("corn", POST).noTiming().noCropHeight();

    assertThat(inside(use, CORN, -1)).isFalse();
    assertThat(inside(use, CORN, CORN.days())).isFalse();
  }

  @Test
  void theSpanRunsFromTheFirstToTheLastDayInside() {
    Use use =
        UseBuilder.of("corn", POST).through("VE", "V8").cropHeight(Limit.atMost(24 * 2.54)).build();

    WindowCheck.Span span = WindowCheck.span(use, CORN).orElseThrow();

    assertThat(span.first()).isEqualTo(CORN.emergenceDay());
    assertThat(CORN.cropHeightCm(span.last())).isLessThanOrEqualTo(24 * 2.54);
    assertThat(CORN.cropHeightCm(span.last() + 1)).isGreaterThan(24 * 2.54);
    assertThat(WindowCheck.span(UseBuilder.of("corn", PRE).through("V3", "V5").build(), CORN))
        .isEmpty();
  }

  /** A date at which corn is V6 in some of the ten springs and past it in others. */
  @Test
  void sharesCountYearsAndTheWiderUseWins() {
    Use toV5 = UseBuilder.of("corn", POST).through("VE", "V5").noCropHeight().build();
    Use toV7 = UseBuilder.of("corn", POST).through("VE", "V7").noCropHeight().build();
    Use refused = UseBuilder.of("corn", POST).through("VE", "V18").noCropHeight().refused().build();
    PassTiming timing = Timings.at(ND2, LocalDate.of(2027, 6, 5));
    long atMostV5 =
        timing.years().stream()
            .filter(y -> Math.floor(y.stage()) <= Fixtures.corn().findStage("V5").orElseThrow())
            .count();

    assertThat(WindowCheck.shareInside(toV5, ND2, timing)).isEqualTo(atMostV5 / 10.0);
    assertThat(WindowCheck.shareInside(toV7, ND2, timing))
        .isGreaterThan(WindowCheck.shareInside(toV5, ND2, timing));
    assertThat(WindowCheck.best(List.of(toV5, refused, toV7), ND2, timing)).contains(toV7);
    assertThat(WindowCheck.best(List.of(toV7, toV7), ND2, timing)).contains(toV7);
    assertThat(WindowCheck.best(List.of(refused), ND2, timing)).contains(refused);
    assertThat(WindowCheck.best(List.of(), ND2, timing)).isEmpty();
  }
}
