package org.swathbook.book.file;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Unit;
import org.swathbook.source.Texts;

/** Readings of values that only mixes have. Each throws {@link MeasureException}. */
final class MixCells {
  /**
   * Hardness as calcium carbonate of a ppm of calcium and of magnesium: Standard Methods for the
   * Examination of Water and Wastewater, 2340 B (from memory).
   */
  private static final double CACO3_PER_CA = 2.497;

  private static final double CACO3_PER_MG = 4.118;

  /** Of a grain in a US gallon: 64.79891 mg in 3.785411784 L (NIST Handbook 44). */
  private static final double PPM_PER_GRAIN = 64.79891 / Unit.GALLON.toSi(1);

  private static final Pattern PSI =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*psi", Pattern.CASE_INSENSITIVE);
  private static final Pattern PPM =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*ppm", Pattern.CASE_INSENSITIVE);

  private MixCells() {}

  /**
   * Hardness in ppm CaCO3 of {@code 320 ppm CaCO3}, {@code 18.7 grains/gal}, {@code 80 ppm Ca} or
   * {@code 80 ppm Ca, 20 ppm Mg}.
   */
  static double hardnessPpmCaCo3(String text) {
    double sum = 0;
    String[] parts = text.split(",");
    for (String part : parts) {
      Numbers.Split s = Numbers.split(part.strip());
      String unit = s.rest().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
      double factor =
          switch (unit) {
            case "ppm caco3", "mg/l caco3" -> 1;
            case "grains/gal", "gpg", "grains per gallon" -> PPM_PER_GRAIN;
            case "ppm ca", "mg/l ca" -> CACO3_PER_CA;
            case "ppm mg", "mg/l mg" -> CACO3_PER_MG;
            default ->
                throw new MeasureException(
                    "'"
                        + text
                        + "' does not say of what the hardness is; write as '320 ppm CaCO3', '18.7"
                        + " grains/gal' or '80 ppm Ca, 20 ppm Mg'");
          };
      boolean whole = factor == 1 || factor == PPM_PER_GRAIN;
      if (s.number() < 0 || whole && parts.length > 1) {
        throw new MeasureException(
            "'" + text + "' is no hardness; write for example '320 ppm CaCO3'");
      }
      sum += s.number() * factor;
    }
    return sum;
  }

  static double ph(String text) {
    double ph = Texts.number(text);
    if (!(ph >= 0 && ph <= 14)) {
      throw new MeasureException("'" + text + "' is no pH; write a number from 0 to 14, as 7.6");
    }
    return ph;
  }

  /** {@code 0.3 ppm}. */
  static double ppm(String text) {
    Matcher m = PPM.matcher(text.strip());
    if (!m.matches()) {
      throw new MeasureException("'" + text + "' is no content; write for example '0.3 ppm'");
    }
    return Double.parseDouble(m.group(1));
  }

  /** {@code 40 psi}. */
  static double psi(String text) {
    Matcher m = PSI.matcher(text.strip());
    if (!m.matches() || !(Double.parseDouble(m.group(1)) > 0)) {
      throw new MeasureException("'" + text + "' is no pressure; write for example '40 psi'");
    }
    return Double.parseDouble(m.group(1));
  }

  /** Degrees clockwise from north of {@code W}, {@code NNW} or {@code 280 degrees}. */
  static double degrees(String text) {
    String t = text.strip();
    int point = Parsers.COMPASS.indexOf(t.toUpperCase(Locale.ROOT));
    if (point >= 0) {
      return point * 360.0 / Parsers.COMPASS.size();
    }
    Matcher m = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?:degrees|°|deg)").matcher(t);
    if (m.matches() && Double.parseDouble(m.group(1)) <= 360) {
      return Double.parseDouble(m.group(1)) % 360;
    }
    throw new MeasureException(
        "'"
            + text
            + "' is no direction; write where the wind comes from, "
            + String.join(", ", List.of("N", "NE", "SSW"))
            + " or '280 degrees'");
  }
}
