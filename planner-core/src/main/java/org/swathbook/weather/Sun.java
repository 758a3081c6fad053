package org.swathbook.weather;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Sunrise and sunset by the equations that NOAA's Global Monitoring Laboratory publishes as its
 * general solar position calculations (fractional year, equation of time, declination; the sun's
 * center at 90.833 degrees from the zenith, which takes in refraction and its radius). Good to a
 * few minutes between the polar circles.
 */
public final class Sun {
  private static final double ZENITH_DEGREES = 90.833;

  private Sun() {}

  /**
   * @param latitude degrees, north positive
   * @param longitude degrees, east positive
   * @return empty where the sun does not both rise and set within that day of the zone's calendar
   */
  public static Optional<SunTimes> times(
      double latitude, double longitude, LocalDate date, ZoneId zone) {
    double year = 2 * Math.PI / date.lengthOfYear() * (date.getDayOfYear() - 1);
    double equationMin =
        229.18
            * (0.000075
                + 0.001868 * StrictMath.cos(year)
                - 0.032077 * StrictMath.sin(year)
                - 0.014615 * StrictMath.cos(2 * year)
                - 0.040849 * StrictMath.sin(2 * year));
    double declination =
        0.006918
            - 0.399912 * StrictMath.cos(year)
            + 0.070257 * StrictMath.sin(year)
            - 0.006758 * StrictMath.cos(2 * year)
            + 0.000907 * StrictMath.sin(2 * year)
            - 0.002697 * StrictMath.cos(3 * year)
            + 0.00148 * StrictMath.sin(3 * year);
    double lat = StrictMath.toRadians(latitude);
    double cosine =
        StrictMath.cos(StrictMath.toRadians(ZENITH_DEGREES))
                / (StrictMath.cos(lat) * StrictMath.cos(declination))
            - StrictMath.tan(lat) * StrictMath.tan(declination);
    if (!(cosine > -1 && cosine < 1)) {
      return Optional.empty();
    }
    double hourAngle = StrictMath.toDegrees(StrictMath.acos(cosine));
    double riseMin = 720 - 4 * (longitude + hourAngle) - equationMin;
    double setMin = 720 - 4 * (longitude - hourAngle) - equationMin;
    LocalDateTime rise = civil(date, riseMin, zone);
    LocalDateTime set = civil(date, setMin, zone);
    return rise.toLocalDate().equals(date) && set.toLocalDate().equals(date)
        ? Optional.of(new SunTimes(rise.toLocalTime(), set.toLocalTime()))
        : Optional.empty();
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEATHER,
                Sun.class,
                "sunrise and sunset",
                "hour angle h of cos h = cos z / (cos φ cos δ) − tan φ tan δ; 720 − 4(λ ± h) − equation of time, minutes of UTC",
                "NOAA Global Monitoring Laboratory, general solar position calculations (from memory)")
            .with("z", ZENITH_DEGREES, "degrees"));
  }

  /** Minutes of UTC from midnight as civil time. */
  private static LocalDateTime civil(LocalDate date, double minutes, ZoneId zone) {
    return date.atStartOfDay(ZoneOffset.UTC)
        .plusSeconds(Math.round(60 * minutes))
        .withZoneSameInstant(zone)
        .toLocalDateTime();
  }
}
