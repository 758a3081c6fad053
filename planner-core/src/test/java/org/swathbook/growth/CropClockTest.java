package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.swathbook.catalog.Crop;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.SyntheticWeather;
import org.swathbook.weather.WeatherDay;

class CropClockTest {
  private static final LocalDate PLANTED = LocalDate.of(2027, 5, 1);
  private static final int PLANTING_DAY =
      (int) (PLANTED.toEpochDay() - LocalDate.of(2026, 9, 1).toEpochDay());

  /** Weather of so many °F-days of base 50 °F a day, inside 50 to 86 °F. */
  private static List<WeatherDay> weather(double fahrenheitDays) {
    double meanC = 10 + fahrenheitDays / 1.8;
    return SyntheticWeather.year(2027, d -> new WeatherDay(d, meanC + 2, meanC - 2, 5));
  }

  private static CropClock clock(Crop crop, double fahrenheitDaysPerDay) {
    return new CropClock(crop, weather(fahrenheitDaysPerDay), PLANTING_DAY);
  }

  private static int day(CropClock clock, Crop crop, String stage) {
    int wanted = crop.findStage(stage).orElseThrow();
    int d = 0;
    while (clock.stage()[d] < wanted) {
      d++;
    }
    return d - PLANTING_DAY + 1;
  }

  /**
   * Nielsen 2014, as quoted by Ohio State University, C.O.R.N. Newsletter 2018-15: 785 °F-days
   * since planting are V8.
   */
  @Test
  void cornAt785DegreeDaysIsAtV8() {
    CropClock clock = clock(Fixtures.corn(), 15.7);

    double stage = clock.stage()[PLANTING_DAY + 49];

    assertThat(50 * 15.7).isEqualTo(785);
    assertThat(Fixtures.corn().stages().get((int) stage).name()).isEqualTo("V8");
  }

  /** Nielsen 2019, Purdue University: 115 °F-days to VE, 82 a collar to V10, then 50 a collar. */
  @ParameterizedTest
  @CsvSource({
    "VE,115",
    "V1,197",
    "V2,279",
    "V3,361",
    "V4,443",
    "V5,525",
    "V6,607",
    "V7,689",
    "V8,771",
    "V9,853",
    "V10,935",
    "V12,1035",
    "V15,1185",
    "V18,1335"
  })
  void cornStagesComeWithTheirHeat(String stage, int fahrenheitDays) {
    Crop corn = Fixtures.corn();

    assertThat(day(clock(corn, 17.5), corn, stage))
        .isEqualTo((int) Math.ceil(fahrenheitDays / 17.5));
  }

  /** A farm paper after Nielsen: at 17.5 a day V3 to V10, seven leaves, take 33 days. */
  @Test
  void sevenLeavesOfCornTake33Days() {
    Crop corn = Fixtures.corn();
    CropClock clock = clock(corn, 17.5);

    assertThat((double) (day(clock, corn, "V10") - day(clock, corn, "V3")))
        .isCloseTo(33, within(1.0));
  }

  /** Three leaves at 200, five at 484, eight at 748 °F-days of 86/50 from emergence (HPRCC). */
  @ParameterizedTest
  @CsvSource({"3-leaf,200", "5-leaf,484", "8-leaf,748", "flag-leaf,990", "boot,1232"})
  void sorghumStagesComeWithTheirHeatFromEmergence(String stage, int fahrenheitDays) {
    Crop sorghum = Fixtures.grainSorghum();
    CropClock clock = clock(sorghum, 20);

    int days = day(clock, sorghum, stage) - day(clock, sorghum, "emergence");

    assertThat((double) days).isCloseTo(fahrenheitDays / 20.0, within(1.0));
  }

  /**
   * V3 14 to 21 days after emergence (University of Kentucky), R1 42 to 56 days (Casteel 2010,
   * Purdue University).
   */
  @Test
  void soybeanStagesByDaysLieInThePublishedRanges() {
    Crop soybean = Fixtures.soybean();
    CropClock clock = clock(soybean, 18);
    int up = day(clock, soybean, "VE");

    assertThat(up).isEqualTo((int) Math.ceil(130 / 18.0));
    assertThat(day(clock, soybean, "V3") - up).isBetween(14, 21);
    assertThat(day(clock, soybean, "R1") - up).isBetween(42, 56);
  }

  @Test
  void runningNumbersGoStraightFromStageToStage() {
    CropClock clock = clock(Fixtures.corn(), 11.5);

    assertThat(clock.stage()[PLANTING_DAY - 1]).isEqualTo(-1);
    assertThat(clock.stage()[PLANTING_DAY + 4])
        .as("half the heat to emergence")
        .isCloseTo(-0.5, within(1e-9));
    assertThat(clock.stage()[PLANTING_DAY + 9]).as("emergence").isCloseTo(0, within(1e-9));
    assertThat(clock.emergenceDay()).isEqualTo(PLANTING_DAY + 9);
  }

  @Test
  void aCropThatNeverComesUpSaysSo() {
    CropClock clock = clock(Fixtures.corn(), -30);

    assertThat(clock.emergenceDay()).isEqualTo(clock.stage().length);
    assertThat(clock.stage()[clock.stage().length - 1]).isBetween(-1.0, 0.0);
  }

  /**
   * Larson 2024, Mississippi State University: V3 5 to 7 in., V5 10 to 14 in., V6 14 to 20 in. The
   * heights of the crop are the middles of these; between them they run straight.
   */
  @Test
  void cornHeightsLieInThePublishedRanges() {
    CropHeight height = new CropHeight(Fixtures.corn());
    Crop corn = Fixtures.corn();

    assertThat(height.cm(corn.findStage("V3").orElseThrow()) / 2.54).isBetween(5.0, 7.0);
    assertThat(height.cm(corn.findStage("V4").orElseThrow()) / 2.54).isCloseTo(9, within(1e-9));
    assertThat(height.cm(corn.findStage("V5").orElseThrow()) / 2.54).isBetween(10.0, 14.0);
    assertThat(height.cm(corn.findStage("V6").orElseThrow()) / 2.54).isBetween(14.0, 20.0);
    assertThat(height.cm(-0.1)).isZero();
    assertThat(height.cm(1000)).isEqualTo(90 * 2.54);
  }
}
