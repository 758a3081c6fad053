package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunTest {

  /**
   * Almanac times to the minute, from memory of the US Naval Observatory's tables and NOAA's
   * calculator; within four minutes here.
   */
  @ParameterizedTest
  @CsvSource({
    "40.71, -74.01, 2027-06-21, America/New_York, 05:25, 20:31",
    "40.71, -74.01, 2027-12-21, America/New_York, 07:17, 16:32",
    "41.88, -87.63, 2027-06-21, America/Chicago, 05:16, 20:29",
    "39.74, -104.99, 2027-06-21, America/Denver, 05:32, 20:31",
    "51.48, 0.00, 2027-03-20, Europe/London, 06:05, 18:14"
  })
  void agreesWithAlmanacs(
      double lat, double lon, LocalDate date, String zone, LocalTime rise, LocalTime set) {
    SunTimes sun = Sun.times(lat, lon, date, ZoneId.of(zone)).orElseThrow();

    assertThat(Duration.between(rise, sun.sunrise()).abs()).isLessThan(Duration.ofMinutes(4));
    assertThat(Duration.between(set, sun.sunset()).abs()).isLessThan(Duration.ofMinutes(4));
  }

  /**
   * The worked example of Reda and Andreas, Solar Position Algorithm for Solar Radiation
   * Applications, NREL/TP-560-34302 (2003, revised 2008): 39.742476 N, 105.1786 W, 17 October 2003,
   * seven hours behind UTC; sunrise 06:12:43, sunset 17:20:19 (figures from memory). The algorithm
   * is another one, good to seconds; ours is held to two minutes.
   */
  @Test
  void agreesWithAFinerAlgorithm() {
    SunTimes sun =
        Sun.times(39.742476, -105.1786, LocalDate.parse("2003-10-17"), ZoneOffset.ofHours(-7))
            .orElseThrow();

    assertThat(Duration.between(LocalTime.of(6, 12, 43), sun.sunrise()).abs())
        .isLessThan(Duration.ofMinutes(2));
    assertThat(Duration.between(LocalTime.of(17, 20, 19), sun.sunset()).abs())
        .isLessThan(Duration.ofMinutes(2));
  }

  /**
   * Equation of time of 13 October 1992: 13 min 42.6 s, the sun before the clock (Meeus,
   * Astronomical Algorithms, example 28.a; from memory). At Greenwich the middle of the day is then
   * as much before noon.
   */
  @Test
  void theSunIsBeforeTheClockInOctober() {
    SunTimes sun = Sun.times(0, 0, LocalDate.parse("1992-10-13"), ZoneOffset.UTC).orElseThrow();
    double noonS = (sun.sunrise().toSecondOfDay() + sun.sunset().toSecondOfDay()) / 2.0;

    assertThat(43200 - noonS).isCloseTo(13 * 60 + 42.6, within(40.0));
  }

  /**
   * A sunset hour angle of 1.527 rad at 20 degrees south on 3 September (FAO Irrigation and
   * Drainage Paper 56, example 8; from memory), 11.665 hours of daylight. That is of the sun's
   * center without refraction; rim and refraction add 2 * 0.833 / 15 / (cos latitude * cos
   * declination) hours or more, here 7 minutes. The paper's declination is up to 0.7 degrees off,
   * here 2 minutes.
   */
  @Test
  void agreesWithAHandbooksDaylight() {
    SunTimes sun =
        Sun.times(-20, -46, LocalDate.parse("2027-09-03"), ZoneOffset.ofHours(-3)).orElseThrow();

    assertThat(hours(sun)).isCloseTo(24 / Math.PI * 1.527 + 7 / 60.0, within(0.06));
  }

  private static double hours(SunTimes sun) {
    return Duration.between(sun.sunrise(), sun.sunset()).toSeconds() / 3600.0;
  }

  /** Clocks went forward on 14 March 2027, the second Sunday of March. */
  @Test
  void theClockOfSummer() {
    ZoneId zone = ZoneId.of("America/Chicago");
    SunTimes before = Sun.times(40.7, -98.6, LocalDate.parse("2027-03-13"), zone).orElseThrow();
    SunTimes after = Sun.times(40.7, -98.6, LocalDate.parse("2027-03-14"), zone).orElseThrow();

    assertThat(Duration.between(before.sunrise(), after.sunrise()).toMinutes()).isBetween(57L, 59L);
  }

  /** In Fairbanks the sun of late June sets after midnight: not on the day on which it rose. */
  @Test
  void aSunsetOfTheNextDayIsNone() {
    assertThat(
            Sun.times(
                64.84, -147.72, LocalDate.parse("2027-06-21"), ZoneId.of("America/Anchorage")))
        .isEmpty();
  }

  @Test
  void theSunMayNotRiseOrSet() {
    ZoneId utc = ZoneId.of("UTC");

    assertThat(Sun.times(75, 20, LocalDate.parse("2027-12-21"), utc)).isEmpty();
    assertThat(Sun.times(75, 20, LocalDate.parse("2027-06-21"), utc)).isEmpty();
  }
}
