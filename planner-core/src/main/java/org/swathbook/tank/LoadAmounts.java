package org.swathbook.tank;

import java.util.Locale;
import java.util.Optional;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Dimension;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.Unit;

/**
 * How much of a thing goes into a load: a rate on an area times the acres of the load, a share of
 * the spray or an amount in 100 gal of it times the gallons of the load.
 */
public final class LoadAmounts {
  private LoadAmounts() {}

  /** In the unit of the rate. */
  public static Quantity of(Rate rate, LoadSize load) {
    double areas =
        rate.area() == Unit.ACRE
            ? load.acres()
            : Unit.ACRE.toSi(load.acres()) / rate.area().toSi(1);
    return new Quantity(rate.amount() * areas, rate.unit());
  }

  /**
   * Of an adjuvant by its rate as written. Empty when the rate does not say how much is poured: as
   * the label says, a range, or a weight of an active.
   */
  public static Optional<Quantity> ofAdjuvant(String written, LoadSize load) {
    try {
      Optional<String> share = ofVolume(written.strip());
      if (share.isPresent()) {
        Quantity percent = Quantity.parse(share.get(), Dimension.SHARE, "1 %");
        return Optional.of(new Quantity(percent.si() * load.gallons(), Unit.GALLON));
      }
      Optional<String> hundred = perHundredGallons(written.strip());
      if (hundred.isPresent()) {
        Quantity each = Quantity.parse(hundred.get());
        Dimension d = each.unit().dimension();
        return d == Dimension.MASS || d == Dimension.VOLUME
            ? Optional.of(new Quantity(each.value() * load.gallons() / 100, each.unit()))
            : Optional.empty();
      }
      Rate rate = Rate.parse(written);
      return rate.basis() == Basis.PRODUCT ? Optional.of(of(rate, load)) : Optional.empty();
    } catch (MeasureException e) {
      // A rate in words, or a range: how much of it is poured is for the label to say.
      return Optional.empty();
    }
  }

  /** {@code 1 %} of {@code 1 % v/v}. */
  private static Optional<String> ofVolume(String written) {
    int end = written.length() - 3;
    if (!written.regionMatches(true, end, "v/v", 0, 3)) {
      return Optional.empty();
    }
    return Optional.of(written.substring(0, end).stripTrailing()).filter(s -> s.endsWith("%"));
  }

  /** {@code 8.5 lb} of {@code 8.5 lb/100 gal}. */
  private static Optional<String> perHundredGallons(String written) {
    int slash = written.lastIndexOf('/');
    String per = written.substring(slash + 1).strip().toLowerCase(Locale.ROOT);
    String unit = per.startsWith("100") ? per.substring(3).strip() : "";
    return slash > 0 && (unit.equals("gal") || unit.equals("gallons"))
        ? Optional.of(written.substring(0, slash).stripTrailing())
        : Optional.empty();
  }
}
