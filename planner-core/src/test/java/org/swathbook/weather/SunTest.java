package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
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

  @Test
  void theSunMayNotRiseOrSet() {
    ZoneId utc = ZoneId.of("UTC");

    assertThat(Sun.times(75, 20, LocalDate.parse("2027-12-21"), utc)).isEmpty();
    assertThat(Sun.times(75, 20, LocalDate.parse("2027-06-21"), utc)).isEmpty();
  }
}
