package org.swathbook.tank;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.swathbook.measure.Quantity;

/**
 * Acres cut into loads of a tank: gallons are acres times gal/acre, a load is at most a full tank,
 * and there are no more loads than it takes. Common practice, no source.
 */
public record LoadSplit(Way way, List<LoadSize> loads) {

  /** How the loads differ. */
  public enum Way {
    /** All fits into one. */
    ONE,
    /** Every load is a full tank. */
    FULL,
    /** Equal loads below a full tank, since full ones would leave a tiny last one. */
    EVENED,
    /** Full tanks and what remains. */
    FULL_AND_REST
  }

  /**
   * A last load of a smaller share of the tank than this is spread over all loads (default, ours):
   * a small load is hard to agitate and to measure for.
   */
  public static final double TINY_SHARE = 0.25;

  /** More loads than this are taken for a mistake in acres or tank. */
  public static final int MOST_LOADS = 1000;

  public LoadSplit {
    loads = List.copyOf(loads);
  }

  /** So many loads as acres and tank take; a tank filled to the brim by rounding is no new one. */
  public static double count(double acres, double gallonsPerAcre, double tankGallons) {
    double tanks = acres * gallonsPerAcre / tankGallons;
    return Math.max(1, Math.ceil(tanks * (1 - Quantity.AT_LIMIT)));
  }

  /**
   * @param tankGallons what the tank holds
   * @throws IllegalArgumentException when a number is not above zero, or there would be more than
   *     {@link #MOST_LOADS} loads
   */
  public static LoadSplit of(double acres, double gallonsPerAcre, double tankGallons) {
    if (!(acres > 0) || !(gallonsPerAcre > 0) || !(tankGallons > 0)) {
      throw new IllegalArgumentException(
          "acres, gal/acre and tank are above zero, not "
              + acres
              + ", "
              + gallonsPerAcre
              + ", "
              + tankGallons);
    }
    double count = count(acres, gallonsPerAcre, tankGallons);
    if (!(count <= MOST_LOADS)) {
      throw new IllegalArgumentException(count + " loads are too many");
    }
    int n = (int) count;
    double rest = acres * gallonsPerAcre - (n - 1) * tankGallons;
    if (n == 1) {
      return new LoadSplit(Way.ONE, equal(1, acres, gallonsPerAcre));
    }
    if (!Quantity.exceeds(tankGallons, rest)) {
      return new LoadSplit(Way.FULL, equal(n, acres, gallonsPerAcre));
    }
    if (Quantity.exceeds(TINY_SHARE * tankGallons, rest)) {
      return new LoadSplit(Way.EVENED, equal(n, acres, gallonsPerAcre));
    }
    List<LoadSize> loads =
        new ArrayList<>(
            Collections.nCopies(n - 1, new LoadSize(tankGallons, tankGallons / gallonsPerAcre)));
    loads.add(new LoadSize(rest, rest / gallonsPerAcre));
    return new LoadSplit(Way.FULL_AND_REST, loads);
  }

  private static List<LoadSize> equal(int n, double acres, double gallonsPerAcre) {
    return Collections.nCopies(n, new LoadSize(acres * gallonsPerAcre / n, acres / n));
  }

  /** What full tanks would leave for the last load, gallons; of {@link Way#EVENED} loads. */
  public double tinyRestGallons(double tankGallons) {
    double all = loads.stream().mapToDouble(LoadSize::gallons).sum();
    return all - (loads.size() - 1) * tankGallons;
  }
}
