package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.book.Field;
import org.swathbook.catalog.Crop;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.SyntheticWeather;

class CanopyClockTest {
  private static final int PLANTING_DAY = 250;
  private static final int HARVEST_DAY = 400;

  private static CropClock clock(Crop crop) {
    return new CropClock(
        crop, SyntheticWeather.year(2027, d -> SyntheticWeather.day(d, 20, 5)), PLANTING_DAY);
  }

  private static CanopyClock canopy(Crop crop, FieldBuilder field) {
    return new CanopyClock(crop, field.build(), clock(crop), HARVEST_DAY);
  }

  private static FieldBuilder soybean() {
    return FieldBuilder.of("X", "soybean", "2027-05-09");
  }

  private static FieldBuilder sorghum(double yieldGoal) {
    return FieldBuilder.of("X", "grain-sorghum", "2027-05-09").yieldGoal(yieldGoal);
  }

  @ParameterizedTest
  @CsvSource({"7.5,30", "15,40", "30,55", "40,55", "5,30", "22.5,48"})
  void soybeanRowsCloseByTheirSpacing(double rowIn, int daysAfterEmergence) {
    CanopyClock canopy = canopy(Fixtures.soybean(), soybean().rowInches(rowIn));

    assertThat(canopy.canopyDay() - clock(Fixtures.soybean()).emergenceDay())
        .isEqualTo(daysAfterEmergence);
  }

  @Test
  void anUnknownSpacingCountsAsTheWidest() {
    assertThat(canopy(Fixtures.soybean(), soybean().rowUnknown()).canopyDay())
        .isEqualTo(canopy(Fixtures.soybean(), soybean().rowInches(30)).canopyDay());
    assertThat(CanopyClock.daysForRow(new TreeMap<>(Map.of(38.1, 40, 76.2, 50)), 100))
        .isEqualTo(50);
  }

  @Test
  void cornClosesAtV10() {
    Field field = FieldBuilder.of("X", "corn", "2027-05-09").build();
    CropClock clock = clock(Fixtures.corn());
    int v10 = Fixtures.corn().findStage("V10").orElseThrow();

    int day = new CanopyClock(Fixtures.corn(), field, clock, HARVEST_DAY).canopyDay();

    assertThat(clock.stage()[day]).isGreaterThanOrEqualTo(v10);
    assertThat(clock.stage()[day - 1]).isLessThan(v10);
  }

  @Test
  void drySorghumBelowAHundredBushelsNeverCloses() {
    Crop crop = Fixtures.grainSorghum();
    int days = clock(crop).stage().length;

    assertThat(canopy(crop, sorghum(99)).canopyDay()).isEqualTo(days);
    assertThat(canopy(crop, sorghum(99)).isClosed(HARVEST_DAY)).isFalse();
    assertThat(canopy(crop, sorghum(100)).canopyDay()).isLessThan(days);
    assertThat(canopy(crop, sorghum(99).irrigated()).canopyDay()).isLessThan(days);
  }

  /** 1 - (1 - t/T)²: nothing at emergence, three quarters half way, all at closure. */
  @Test
  void coverGrowsTowardsClosureAndEndsWithHarvest() {
    CanopyClock canopy = canopy(Fixtures.soybean(), soybean().rowInches(15));
    int up = clock(Fixtures.soybean()).emergenceDay();

    assertThat(canopy.cover(up - 1)).isZero();
    assertThat(canopy.cover(up)).isZero();
    assertThat(canopy.cover(up + 20)).isCloseTo(0.75, within(1e-9));
    assertThat(canopy.cover(up + 40)).isEqualTo(1);
    assertThat(canopy.cover(HARVEST_DAY)).isEqualTo(1);
    assertThat(canopy.cover(HARVEST_DAY + 1)).isZero();
  }

  @Test
  void anOpenStandKeepsBareGround() {
    CanopyClock canopy = canopy(Fixtures.grainSorghum(), sorghum(80));

    assertThat(canopy.cover(HARVEST_DAY)).isEqualTo(CanopyClock.OPEN_STAND);
  }
}
