package org.swathbook.rules.weather;

import java.time.Duration;
import java.time.LocalTime;
import org.swathbook.weather.SunTimes;

/** Hours of a day by the sun. */
final class SunHours {
  private SunHours() {}

  /** Hours since sunrise, negative before it. */
  static double sinceSunrise(SunTimes sun, LocalTime time) {
    return Duration.between(sun.sunrise(), time).toSeconds() / 3600.0;
  }

  /** Hours to sunset, negative after it. */
  static double toSunset(SunTimes sun, LocalTime time) {
    return Duration.between(time, sun.sunset()).toSeconds() / 3600.0;
  }

  /** {@code 07:12 to 18:40} of an interval by the sun. */
  static String words(SunTimes sun, double afterSunrise, double beforeSunset) {
    return clock(sun.sunrise().plusMinutes(Math.round(60 * afterSunrise)))
        + " to "
        + clock(sun.sunset().minusMinutes(Math.round(60 * beforeSunset)));
  }

  static String clock(LocalTime time) {
    return String.format(java.util.Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute());
  }
}
