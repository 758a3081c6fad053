package org.swathbook.rules;

import java.util.List;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Quantity;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WalkedPasses;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * The house rules as tests of a walked season, so that a finding and a broken house rule never
 * disagree. A value exactly at a threshold is fine.
 */
public final class HouseTests {

  /** A layer that ends with less emergence than this to come needs no other (percent). */
  private static final double HARDLY_ANY_TO_COME_PCT = 2;

  /** Years with a hole between two layers, above this share, are too many. */
  private static final double HOLES = 0.20;

  /** The worst year in five may be exposed this many times the limit. */
  private static final double WORST_YEAR = 2;

  private HouseTests() {}

  /**
   * The one foliar site on which the last pass before this one rested alone on a weed that stood,
   * whether made or planned: bit n for site n, 0 for none.
   */
  public static long loneSiteBefore(WalkedPasses season, int pass, WeedId weed) {
    for (int earlier = pass - 1; earlier >= 0; earlier--) {
      for (PassWeed w : season.passes().get(earlier).weeds()) {
        if (w.weed().equals(weed) && w.stands() && isLone(sites(w))) {
          return sites(w);
        }
      }
    }
    return 0;
  }

  /**
   * Whether effective foliar sites are one alone, and the one that an earlier pass rested on.
   *
   * @param sites bit n for site n
   * @param before the same of the last pass that rested on one alone; 0 for none
   */
  public static boolean isLoneAgain(long sites, long before) {
    return isLone(sites) && sites == before;
  }

  /** Whether they are one alone. */
  public static boolean isLone(long sites) {
    return Long.bitCount(sites) == 1;
  }

  /** Effective foliar sites: bit n for site n. */
  public static long sites(PassWeed weed) {
    return weed.foliar().stream()
        .filter(SiteControl::effective)
        .mapToLong(s -> 1L << s.site().number())
        .reduce(0, (a, b) -> a | b);
  }

  /**
   * Soil sites that the house would have of a pass: none when it lays no layer against the weed.
   */
  public static int soilSitesWanted(HouseRules house, WalkedPasses season, int pass, WeedId weed) {
    if (!isLayer(season, pass, weed)) {
      return 0;
    }
    for (int earlier = 0; earlier < pass; earlier++) {
      if (isLayer(season, earlier, weed)) {
        return soilSitesOfLayer(house, false);
      }
    }
    return soilSitesOfLayer(house, true);
  }

  /**
   * Soil sites that the house would have in a layer against a driver weed.
   *
   * @param first whether no pass before has laid one against it
   */
  public static int soilSitesOfLayer(HouseRules house, boolean first) {
    return first ? house.minSoilSitesFirst() : house.minSoilSitesOverlap();
  }

  /** Whether a pass lays a layer against a weed in at least half of the years. */
  public static boolean isLayer(WalkedPasses season, int pass, WeedId weed) {
    int years = 0;
    for (WalkedPasses.Year year : season.years()) {
      for (LayerSpan l : year.layers()) {
        if (l.pass() == pass && l.weed().equals(weed)) {
          years++;
          break;
        }
      }
    }
    return isLayer(years, season.years().size());
  }

  /**
   * @param years in which the pass lays a layer against the weed
   */
  public static boolean isLayer(int years, int ofYears) {
    return years > 0 && 2 * years >= ofYears;
  }

  /**
   * Too much emergence with no layer that holds: in the median year, or twice that in one of five.
   */
  public static boolean isExposed(HouseRules house, WeedOutcome weed) {
    return isExposed(
        house, weed.pressure().weed().id(), weed.exposedPct(), weed.exposedWorstFifthPct());
  }

  public static boolean isExposed(
      HouseRules house, WeedId weed, double medianPct, double worstFifthPct) {
    double mostPct = 100 * house.maxExposed(weed);
    return Quantity.exceeds(medianPct, mostPct)
        || Quantity.exceeds(worstFifthPct, WORST_YEAR * mostPct);
  }

  /**
   * What of it is too much, percent: the median year's when that is, else that of the year that one
   * in five is worse than.
   */
  public static Exposure exposure(HouseRules house, WeedOutcome weed) {
    return exposure(
        house, weed.pressure().weed().id(), weed.exposedPct(), weed.exposedWorstFifthPct());
  }

  public static Exposure exposure(
      HouseRules house, WeedId weed, double medianPct, double worstFifthPct) {
    double mostPct = 100 * house.maxExposed(weed);
    return Quantity.exceeds(medianPct, mostPct)
        ? new Exposure(true, medianPct, mostPct)
        : new Exposure(false, worstFifthPct, WORST_YEAR * mostPct);
  }

  /**
   * Exposed emergence held against its limit.
   *
   * @param inMedianYear of the median year, else of one year in five
   */
  public record Exposure(boolean inMedianYear, double actualPct, double limitPct) {}

  /** Pairs of layers that overlap too little in the median year or leave holes in too many. */
  public static List<WeedOutcome.LayerOverlap> shortOverlaps(HouseRules house, WeedOutcome weed) {
    return weed.overlaps().stream().filter(o -> isShort(house, o)).toList();
  }

  public static boolean isShort(HouseRules house, WeedOutcome.LayerOverlap o) {
    return o.stillToComePct() >= HARDLY_ANY_TO_COME_PCT
        && (o.medianDays() < house.minLayerOverlapDays() && !lastsToCanopy(o)
            || Quantity.exceeds(o.negativeShare(), HOLES));
  }

  /** In the median year the first layer does until the canopy closes. */
  private static boolean lastsToCanopy(WeedOutcome.LayerOverlap o) {
    return 2 * o.canopyShare() >= 1;
  }

  /** Below the season's control of a driver weed, or of another weed. */
  public static boolean isShortOfControl(HouseRules house, WeedOutcome weed) {
    return isShortOfControl(house, weed.pressure(), weed.controlPct());
  }

  public static boolean isShortOfControl(HouseRules house, WeedPressure weed, double controlPct) {
    return Quantity.exceeds(controlAskedPct(house, weed), controlPct);
  }

  public static double controlAskedPct(HouseRules house, WeedOutcome weed) {
    return controlAskedPct(house, weed.pressure());
  }

  private static double controlAskedPct(HouseRules house, WeedPressure weed) {
    return 100 * (weed.driver().isDriver() ? house.seasonControl() : house.otherControl());
  }

  /** With the site gone whose loss hurts most, control falls below the house level. */
  public static boolean isLostWithOneSite(HouseRules house, WeedOutcome weed) {
    return isLostWithOneSite(house, weed.controlPctWithoutWeakest());
  }

  public static boolean isLostWithOneSite(HouseRules house, double controlPctWithoutWeakest) {
    return Quantity.exceeds(100 * house.oneSiteGone(), controlPctWithoutWeakest);
  }

  public static boolean isShortOfWindows(HouseRules house, SeasonOutcome season) {
    return isShortOfWindows(house, season.windowConfidencePct());
  }

  public static boolean isShortOfWindows(HouseRules house, double windowConfidencePct) {
    return Quantity.exceeds(100 * house.windowConfidence(), windowConfidencePct);
  }
}
