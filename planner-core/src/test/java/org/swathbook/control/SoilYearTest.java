package org.swathbook.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.testing.FieldBuilder;
import org.swathbook.testing.Fixtures;
import org.swathbook.testing.SyntheticWeather;
import org.swathbook.weather.StationWeather;

/**
 * How a layer ages in weather far from that of the weeks by which its length is stated: in the mean
 * of the days on which the soil is not frozen no slower than 0.6 and no faster than 1.4 days a day
 * (default, ours).
 */
class SoilYearTest {
  /** May and June as usual, July hot and wet, a dry October of 2 °C with ten days of hard frost. */
  private static final SeasonTrace TRACE = trace();

  private static SeasonTrace trace() {
    Field field =
        FieldBuilder.of("T", "soybean", "2027-05-10")
            .soil(SoilTexture.SILT_LOAM, 2, 6.5)
            .station("made", 40.7)
            .rowInches(30)
            .build();
    StationWeather station =
        SyntheticWeather.station("made", 2027, d -> SyntheticWeather.day(d, meanC(d), rainMm(d)));
    return TraceBuilder.build(
            Fixtures.bookWith(station, field, Fixtures.weed("T", "AMAPA", 50, DriverKind.YES, 0)),
            field)
        .years()
        .get(0);
  }

  private static double meanC(LocalDate d) {
    boolean frost = d.getMonthValue() == 10 && d.getDayOfMonth() > 10 && d.getDayOfMonth() <= 20;
    return frost ? -15 : d.getMonthValue() == 10 ? 2 : d.getMonthValue() == 7 ? 36 : 15;
  }

  private static double rainMm(LocalDate d) {
    return d.getMonthValue() == 7 ? 12 : d.getMonthValue() > 8 ? 0 : 1;
  }

  private static int day(int month, int ofMonth) {
    return TRACE.dayOf(LocalDate.of(2027, month, ofMonth));
  }

  @Test
  void inHeatAndWetItAgesNoFasterThanAtOneAndFourTenths() {
    assertThat(TRACE.soilAge(day(7, 2), day(7, 30))).isGreaterThan(1.4 * 28);
    assertThat(new SoilYear(TRACE.soil()).age(day(7, 2), day(7, 30)))
        .isCloseTo(1.4 * 28, within(1e-9));
  }

  @Test
  void inColdAndDryItAgesNoSlowerThanAtSixTenths() {
    assertThat(TRACE.soilAge(day(10, 2), day(10, 10))).isLessThan(0.6 * 8);
    assertThat(new SoilYear(TRACE.soil()).age(day(10, 2), day(10, 10)))
        .isCloseTo(0.6 * 8, within(1e-9));
  }

  @Test
  void betweenTheBoundsItAgesAsTheSoilDoes() {
    double age = TRACE.soilAge(day(5, 12), day(6, 15));
    assertThat(age).isBetween(0.6 * 34, 1.4 * 34);
    assertThat(new SoilYear(TRACE.soil()).age(day(5, 12), day(6, 15))).isEqualTo(age);
  }

  /** The bounds go by days without frost, else a winter would age a layer that lies frozen. */
  @Test
  void frozenDaysAgeNothing() {
    int from = day(10, 16);
    int to = day(10, 20);
    assertThat(TRACE.soilAge(from, to)).isZero();
    assertThat(new SoilYear(TRACE.soil()).age(from, to)).isZero();
    int thawed = 0;
    for (int d = day(10, 2); d < day(10, 31); d++) {
      thawed += TRACE.soilAge(d, d + 1) > 0 ? 1 : 0;
    }
    assertThat(thawed).isLessThan(29);
    assertThat(new SoilYear(TRACE.soil()).age(day(10, 2), day(10, 31)))
        .isCloseTo(0.6 * thawed, within(1e-9));
  }

  /** Fields of one soil ask for its year one after the other, and other years come between. */
  @Test
  void aSoilsYearIsMadeOnceForAllFieldsOnIt() {
    SharedEffects shared = new SharedEffects(Fixtures.book().catalog());
    SoilYear first = shared.soil(TRACE.soil());
    SoilYear other = shared.soil(trace().soil());

    assertThat(shared.soil(TRACE.soil())).isSameAs(first);
    assertThat(other).isNotSameAs(first);
  }
}
