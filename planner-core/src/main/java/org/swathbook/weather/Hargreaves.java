package org.swathbook.weather;

import java.time.LocalDate;
import java.util.List;
import org.swathbook.model.ModelCard;
import org.swathbook.model.ModelSection;

/**
 * Reference evapotranspiration from temperatures alone, by FAO Irrigation and Drainage Paper 56
 * (Allen et al. 1998).
 */
public final class Hargreaves {
  /** Solar constant, MJ m⁻² min⁻¹ (FAO-56 equation 21). */
  private static final double SOLAR_CONSTANT = 0.0820;

  /** Millimetres of water that a MJ/m² evaporates (FAO-56 equation 20). */
  private static final double MM_PER_MJ = 0.408;

  private Hargreaves() {}

  /**
   * Radiation above the atmosphere, MJ m⁻² day⁻¹ (FAO-56 equations 21 to 25).
   *
   * @param latitude degrees, north positive; between the polar circles
   * @param dayOfYear 1 to 366
   */
  public static double extraterrestrialRadiation(double latitude, int dayOfYear) {
    double phi = StrictMath.toRadians(latitude);
    double angle = 2 * Math.PI * dayOfYear / 365;
    double distance = 1 + 0.033 * StrictMath.cos(angle);
    double declination = 0.409 * StrictMath.sin(angle - 1.39);
    double cosSunset = -StrictMath.tan(phi) * StrictMath.tan(declination);
    // Beyond the polar circles the sun neither rises or nor sets on some days.
    double sunset = StrictMath.acos(Math.max(-1, Math.min(1, cosSunset)));
    return 24
        * 60
        / Math.PI
        * SOLAR_CONSTANT
        * distance
        * (sunset * StrictMath.sin(phi) * StrictMath.sin(declination)
            + StrictMath.cos(phi) * StrictMath.cos(declination) * StrictMath.sin(sunset));
  }

  /**
   * Reference evapotranspiration, mm/day, at least 0 (FAO-56 equation 52).
   *
   * @param radiation extraterrestrial, MJ m⁻² day⁻¹
   */
  public static double referenceMm(double tmaxC, double tminC, double radiation) {
    double mean = (tmaxC + tminC) / 2;
    return Math.max(
        0, 0.0023 * (mean + 17.8) * Math.sqrt(Math.max(0, tmaxC - tminC)) * MM_PER_MJ * radiation);
  }

  /** Reference evapotranspiration of an observed day, mm. */
  public static double referenceMm(WeatherDay day, double latitude) {
    LocalDate date = day.date();
    return referenceMm(
        day.tmaxC(), day.tminC(), extraterrestrialRadiation(latitude, date.getDayOfYear()));
  }

  /** What the reference prints. */
  static List<ModelCard> cards() {
    return List.of(
        ModelCard.of(
                ModelSection.WEATHER,
                Hargreaves.class,
                "reference evapotranspiration",
                "0.0023 (T + 17.8) √(Tx − Tn) · k Ra, Ra by latitude and day from the solar constant",
                "FAO-56 (Allen et al. 1998), equations 20–25 and 52")
            .with("solar constant", SOLAR_CONSTANT, "MJ m⁻² min⁻¹")
            .with("k", MM_PER_MJ, "mm per MJ/m²")
            .given("mm/day; Ra in MJ m⁻² day⁻¹"));
  }
}
