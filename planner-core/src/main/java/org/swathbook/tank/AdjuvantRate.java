package org.swathbook.tank;

import java.util.Locale;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Rate;
import org.swathbook.measure.RateRange;
import org.swathbook.program.Adjuvant;

/**
 * A rate of an adjuvant as a label writes it. Rates compare only inside one unit: a share of the
 * spray and an amount on an area meet at a spray volume that is not known here.
 *
 * @param unit rates of the same text compare
 * @param most upper end of a range
 */
record AdjuvantRate(String written, String unit, double least, double most) {

  static AdjuvantRate of(String written) {
    if (written.equals(Adjuvant.RATE_OF_THE_LABEL)) {
      return new AdjuvantRate(written, "", 0, 0);
    }
    try {
      RateRange r = RateRange.parse(written);
      return r.high().isVolume()
          ? new AdjuvantRate(written, "L/ha", r.low().litresPerHa(), r.high().litresPerHa())
          : new AdjuvantRate(
              written, "kg/ha " + basis(r.high()), r.low().kgPerHa(), r.high().kgPerHa());
    } catch (MeasureException e) {
      // Not an amount on an area: 1 % v/v, 8.5 lb/100 gal.
      Numbers.SplitRange s = Numbers.splitRange(written);
      return new AdjuvantRate(written, unit(s.rest()), s.low(), s.high());
    }
  }

  /** However it is spaced and whatever its case. */
  private static String unit(String text) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      if (!Character.isWhitespace(text.charAt(i))) {
        out.append(text.charAt(i));
      }
    }
    return out.toString().toLowerCase(Locale.ROOT);
  }

  private static String basis(Rate rate) {
    return rate.basis().symbol();
  }

  /** The larger of two of one unit; of two that say the same, the text that comes first. */
  AdjuvantRate larger(AdjuvantRate other) {
    int c = Double.compare(most, other.most);
    if (c == 0) {
      c = Double.compare(least, other.least);
    }
    if (c == 0) {
      c = other.written.compareTo(written);
    }
    return c >= 0 ? this : other;
  }
}
