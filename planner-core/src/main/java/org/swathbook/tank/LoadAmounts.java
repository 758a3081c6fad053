package org.swathbook.tank;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
  private static final Pattern BY_VOLUME =
      Pattern.compile("(.+%)\\s*v/v", Pattern.CASE_INSENSITIVE);
  private static final Pattern PER_HUNDRED =
      Pattern.compile("(.+?)\\s*/\\s*100\\s*(?:gal|gallons)", Pattern.CASE_INSENSITIVE);

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
      Matcher share = BY_VOLUME.matcher(written.strip());
      if (share.matches()) {
        Quantity percent = Quantity.parse(share.group(1), Dimension.SHARE, "1 %");
        return Optional.of(new Quantity(percent.si() * load.gallons(), Unit.GALLON));
      }
      Matcher hundred = PER_HUNDRED.matcher(written.strip());
      if (hundred.matches()) {
        Quantity each = Quantity.parse(hundred.group(1));
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
}
