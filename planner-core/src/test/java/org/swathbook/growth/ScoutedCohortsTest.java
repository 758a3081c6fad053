package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.swathbook.book.ScoutedHeight;
import org.swathbook.testing.Fixtures;

/**
 * Worked by hand: 6 plants/m² up on day 100 and 4 on day 110, 10 °C-days of growth a day, planting
 * on day 90 or, where tillage matters, on day 130.
 */
class ScoutedCohortsTest {
  private static final CohortSet MODELLED =
      new CohortSet(
          Fixtures.weed("AMAPA"),
          new int[] {100, 110},
          new double[] {6, 4},
          new double[] {1, 1},
          IntStream.range(0, 400).mapToDouble(d -> 10.0 * d).toArray());

  private static final HeightModel MODEL = MODELLED.model();

  private static CohortSet seen(ScoutedCohorts.Sight... sights) {
    return ScoutedCohorts.apply(MODELLED, List.of(sights), 90, false);
  }

  private static ScoutedCohorts.Sight tall(int day, double lowCm, double highCm) {
    return new ScoutedCohorts.Sight(
        day, Optional.of(ScoutedHeight.range(lowCm, highCm)), OptionalDouble.empty());
  }

  private static ScoutedCohorts.Sight counted(int day, double perM2) {
    return new ScoutedCohorts.Sight(day, Optional.empty(), OptionalDouble.of(perM2));
  }

  private static double[] standing(CohortSet set, int day) {
    return IntStream.range(0, set.count())
        .mapToDouble(c -> set.standing(c, day, 90))
        .filter(n -> n > 0)
        .toArray();
  }

  @Test
  void nothingSeenIsTheSameSet() {
    assertThat(seen()).isSameAs(MODELLED);
  }

  /** 5 to 15 cm on day 120: a quarter 5, half 10, a quarter 15 cm, of each cohort. */
  @Test
  void aRangeBecomesShortMiddleAndTallPlantsOfEveryCohort() {
    CohortSet set = seen(tall(120, 5, 15));

    assertThat(standing(set, 120)).containsExactly(1.5, 3, 1.5, 1, 2, 1);
    for (int c = 0; c < 6; c++) {
      double cm = new double[] {5, 10, 15}[c % 3];
      assertThat(set.heightCm(c, 120)).isCloseTo(cm, within(1e-9));
      assertThat(set.heightCm(c, 121))
          .isCloseTo(MODEL.heightCm(MODEL.ageAt(cm) + 10), within(1e-9));
      assertThat(set.age(c, 119)).isEqualTo(c < 3 ? 190 : 90);
      assertThat(set.emergedOn(c)).isEqualTo(c < 3 ? 100 : 110);
    }
    assertThat(set.totalPerM2()).isEqualTo(10);
  }

  /** Modelled on day 120: 60 % of 200 °C-days, 40 % of 100. The median is the taller height. */
  @Test
  void oneHeightIsTheMedianAndTheSpreadIsThatOfTheModel() {
    double tall = MODEL.heightCm(200);
    double small = MODEL.heightCm(100);
    CohortSet set = seen(tall(120, 8, 8));

    assertThat(set.heightCm(0, 120)).isCloseTo(8 * small / tall, within(1e-9));
    assertThat(set.heightCm(1, 120)).isCloseTo(8, within(1e-9));
    assertThat(set.heightCm(2, 120)).isCloseTo(8, within(1e-9));
  }

  @Test
  void aLaterHeightMovesTheThreeAndDividesNoMore() {
    CohortSet set = seen(tall(120, 5, 15), tall(130, 20, 40));

    assertThat(standing(set, 130)).containsExactly(1.5, 3, 1.5, 1, 2, 1);
    assertThat(set.heightCm(0, 125)).isCloseTo(MODEL.heightCm(MODEL.ageAt(5) + 50), within(1e-9));
    assertThat(set.heightCm(0, 130)).isCloseTo(20, within(1e-9));
    assertThat(set.heightCm(4, 130)).isCloseTo(30, within(1e-9));
    assertThat(set.heightCm(5, 130)).isCloseTo(40, within(1e-9));
  }

  /** 3 plants/m² on day 115, in the proportion of the model, 6 to 4, and of its sizes. */
  @Test
  void aCountStandsInThePlaceOfAllThatWereUp() {
    CohortSet set = seen(counted(115, 3));

    assertThat(standing(set, 114)).containsExactly(6, 4);
    assertThat(standing(set, 115)).containsExactly(new double[] {1.8, 1.2}, within(1e-12));
    assertThat(set.endedBy(114)).isZero();
    assertThat(set.endedBy(115)).isEqualTo(2);
    assertThat(set.age(2, 115)).isEqualTo(150);
    assertThat(set.age(3, 120)).isEqualTo(100);
    assertThat(set.competesFrom(2)).isEqualTo(100);
    assertThat(set.competesFrom(3)).isEqualTo(110);
    assertThat(set.heirsFrom(0)).isEqualTo(2);
    assertThat(set.heirsTo(0)).isEqualTo(3);
    assertThat(set.totalPerM2()).isEqualTo(10);
  }

  @Test
  void whatComesUpAfterACountStaysTheModels() {
    CohortSet set = seen(counted(105, 3));

    assertThat(standing(set, 105)).containsExactly(new double[] {3}, within(1e-12));
    assertThat(standing(set, 110)).containsExactly(new double[] {3, 4}, within(1e-12));
    assertThat(set.emergedOn(1)).isEqualTo(105);
    assertThat(set.emergedOn(2)).isEqualTo(110);
  }

  @Test
  void aCountOfNoneLeavesNothingStanding() {
    CohortSet set = seen(counted(115, 0));

    assertThat(set.count()).isEqualTo(2);
    assertThat(standing(set, 114)).containsExactly(6, 4);
    assertThat(standing(set, 115)).isEmpty();
  }

  /** Where the model has none up, a plant of 10 cm came up when its heat began. */
  @Test
  void plantsThatTheModelDoesNotHaveCameUpWhenTheirHeightSays() {
    CohortSet set =
        seen(
            new ScoutedCohorts.Sight(
                95, Optional.of(ScoutedHeight.range(10, 10)), OptionalDouble.of(2)));

    assertThat(standing(set, 95)).containsExactly(2);
    assertThat(set.heightCm(0, 95)).isCloseTo(10, within(1e-9));
    assertThat(set.competesFrom(0)).isEqualTo(95 - (int) Math.ceil(MODEL.ageAt(10) / 10 - 1e-9));
    assertThat(seen(counted(95, 2)).heightCm(0, 95)).isZero();
    assertThat(standing(set, 110)).containsExactly(2, 6, 4);
  }

  /** Counts week by week stay a handful of cohorts, and add up to what was counted. */
  @Test
  void manyScoutingsStayFewCohorts() {
    ScoutedCohorts.Sight[] weekly =
        IntStream.range(0, 10)
            .mapToObj(
                i ->
                    new ScoutedCohorts.Sight(
                        112 + 7 * i,
                        Optional.of(ScoutedHeight.range(5 + i, 15 + 2 * i)),
                        OptionalDouble.of(10 - i)))
            .toArray(ScoutedCohorts.Sight[]::new);
    CohortSet set = seen(weekly);

    assertThat(set.count()).isEqualTo(2 + 10 * 6);
    for (ScoutedCohorts.Sight s : weekly) {
      assertThat(Arrays.stream(standing(set, s.day())).sum())
          .isCloseTo(s.perM2().orElseThrow(), within(1e-9));
    }
  }

  /** Tillage kills under 4 in and halves up to 8 in (default): the seen height decides. */
  @Test
  void tillageTakesPlantsByTheHeightThatWasSeen() {
    CohortSet set = ScoutedCohorts.apply(MODELLED, List.of(tall(129, 5, 60)), 130, true);

    assertThat(set.tillageSurvival(0)).isZero();
    assertThat(set.tillageSurvival(2)).isEqualTo(1);
    assertThat(set.standing(2, 129, 130)).isEqualTo(1.5);
  }
}
