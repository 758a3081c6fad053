package org.swathbook.catalog.file;

import org.swathbook.measure.Basis;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Rate;
import org.swathbook.measure.RateRange;
import org.swathbook.source.TextParser;

/**
 * Reads weights of one active on an area. Where a weight of active and of acid (or cation) differ,
 * it must say which; it must be the one in which the ingredient counts.
 */
record ActiveRates(Basis basis) {

  String example() {
    return "0.5 lb " + basis.symbol() + "/acre";
  }

  TextParser<Rate> one() {
    return text -> checked(Rate.parse(text), text);
  }

  TextParser<RateRange> range() {
    return text -> {
      RateRange r = RateRange.parse(text);
      return new RateRange(checked(r.low(), text), checked(r.high(), text));
    };
  }

  private Rate checked(Rate rate, String text) {
    if (!(rate.amount() > 0)) {
      throw new MeasureException(
          "'" + text + "' holds a rate of zero; write one above zero, as '" + example() + "'");
    }
    if (rate.isVolume()) {
      throw new MeasureException(
          "'" + text + "' is a volume; write a weight of the active, as '" + example() + "'");
    }
    if (rate.basis() == basis || rate.basis() == Basis.PRODUCT && basis == Basis.AI) {
      return new Rate(rate.amount(), rate.unit(), rate.area(), basis);
    }
    if (rate.basis() == Basis.PRODUCT) {
      throw new MeasureException(
          "'" + text + "' does not say of what; write '" + basis.symbol() + "' behind the weight");
    }
    throw new MeasureException(
        "'"
            + text
            + "' counts "
            + rate.basis().symbol()
            + ", but this ingredient counts "
            + basis.symbol()
            + "; write it as '"
            + example()
            + "'");
  }
}
