package org.swathbook.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must hold of the sun wherever crops grow. */
class SunProperties {
  private static final LocalDate FIRST = LocalDate.of(2020, 1, 1);

  private static SunTimes at(double latitude, double longitude, int day) {
    // The hour by the place's own meridian, so that noon is near 12.
    ZoneOffset zone = ZoneOffset.ofHours((int) Math.round(longitude / 15));
    return Sun.times(latitude, longitude, FIRST.plusDays(day), zone).orElseThrow();
  }

  private static double hours(SunTimes sun) {
    return Duration.between(sun.sunrise(), sun.sunset()).toSeconds() / 3600.0;
  }

  /** The equation of time is never beyond 17 minutes, the zone's meridian at most 30 away. */
  @Property
  void theMiddleOfTheDayIsNearNoon(
      @ForAll @DoubleRange(min = -60, max = 60) double latitude,
      @ForAll @DoubleRange(min = -165, max = 165) double longitude,
      @ForAll @IntRange(max = 8000) int day) {
    SunTimes sun = at(latitude, longitude, day);
    double noonH = (sun.sunrise().toSecondOfDay() + sun.sunset().toSecondOfDay()) / 7200.0;

    assertThat(noonH).isBetween(12 - 48 / 60.0, 12 + 48 / 60.0);
  }

  /** North and south together have a day and a night, and what refraction and the rim add. */
  @Property
  void summerHereIsWinterThere(
      @ForAll @DoubleRange(min = 0, max = 60) double latitude,
      @ForAll @IntRange(max = 8000) int day) {
    double both = hours(at(latitude, 0, day)) + hours(at(-latitude, 0, day));

    assertThat(both).isBetween(24.2, 24.9);
  }

  /** A degree to the west is four minutes later. */
  @Property
  void theSunComesFromTheEast(
      @ForAll @DoubleRange(min = -60, max = 60) double latitude,
      @ForAll @DoubleRange(min = -6, max = 6) double longitude,
      @ForAll @IntRange(max = 8000) int day) {
    SunTimes here = at(latitude, longitude, day);
    SunTimes west = at(latitude, longitude - 1, day);

    assertThat(Duration.between(here.sunrise(), west.sunrise()).toSeconds() / 60.0)
        .isCloseTo(4, within(0.04));
  }

  /** In the northern summer days are longer the further north. */
  @Property
  void northIsLongerInSummer(
      @ForAll @DoubleRange(min = -55, max = 60) double latitude,
      @ForAll @IntRange(min = 100, max = 240) int dayOfYear) {
    assertThat(hours(at(latitude + 1, 0, dayOfYear)))
        .isGreaterThan(hours(at(latitude, 0, dayOfYear)));
  }
}
