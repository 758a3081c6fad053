package org.swathbook.tank;

import java.util.Optional;
import java.util.OptionalDouble;
import org.swathbook.measure.MeasureException;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;

/** Rates of adjuvants, whichever way they are written, as amounts in 100 gal of spray. */
public final class InHundredGallons {
  private static final double HUNDRED = 100;

  private InHundredGallons() {}

  /**
   * The least that a rate as written brings into 100 gal; of a range its lower end. Empty when the
   * rate does not say how much that is, or goes by the acre and the spray volume is not known.
   */
  public static Optional<Quantity> least(String written, OptionalDouble gallonsPerAcre) {
    String low = lowEnd(written);
    if (gallonsPerAcre.isPresent()) {
      double acres = HUNDRED / gallonsPerAcre.getAsDouble();
      return LoadAmounts.ofAdjuvant(low, new LoadSize(HUNDRED, acres));
    }
    // Whatever the acres, a share of the spray is the same in 100 gal of it; a rate on land is not.
    Optional<Quantity> one = LoadAmounts.ofAdjuvant(low, new LoadSize(HUNDRED, 1));
    return one.equals(LoadAmounts.ofAdjuvant(low, new LoadSize(HUNDRED, 2)))
        ? one
        : Optional.empty();
  }

  private static String lowEnd(String written) {
    try {
      Numbers.SplitRange range = Numbers.splitRange(written);
      return Numbers.plain(range.low()) + " " + range.rest();
    } catch (MeasureException e) {
      // Words: as the label says.
      return written;
    }
  }
}
