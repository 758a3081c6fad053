package org.swathbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.swathbook.book.Book;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.WeedId;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SeasonSums;
import org.swathbook.season.outcome.WalkedPasses;
import org.swathbook.season.outcome.WeedOutcome;

/** Which house rules a walked program breaks, for the driver weeds. */
public final class HouseRuleCheck {
  public static final String MIN_FOLIAR_SITES = "minFoliarSites";
  public static final String MIN_SOIL_SITES = "minSoilSites";
  public static final String MIN_LAYER_OVERLAP = "minLayerOverlap";
  public static final String MAX_EXPOSED_EMERGENCE = "maxExposedEmergence";
  public static final String SEASON_CONTROL = "seasonControl";
  public static final String ONE_SITE_GONE = "oneSiteGone";
  public static final String WINDOW_CONFIDENCE = "windowConfidence";

  /** All names, in the order in which they are reported. */
  public static final List<String> NAMES =
      List.of(
          MIN_FOLIAR_SITES,
          MIN_SOIL_SITES,
          MIN_LAYER_OVERLAP,
          MAX_EXPOSED_EMERGENCE,
          SEASON_CONTROL,
          ONE_SITE_GONE,
          WINDOW_CONFIDENCE);

  private HouseRuleCheck() {}

  /** The same of a season walked year by year. */
  public static List<BrokenHouseRule> broken(Book book, TankOffers offers, SeasonOutcome season) {
    return broken(book, offers, season.sums());
  }

  /**
   * In the order of the names, then passes, then the field's weeds. What a pass that is made lacks
   * is not held against the program: nothing can change it.
   *
   * @param offers of the field
   */
  public static List<BrokenHouseRule> broken(Book book, TankOffers offers, SeasonSums season) {
    HouseRules house = book.house();
    List<WeedOutcome> drivers =
        season.weeds().stream().filter(w -> w.pressure().driver().isDriver()).toList();
    List<BrokenHouseRule> foliar = new ArrayList<>();
    List<BrokenHouseRule> soil = new ArrayList<>();
    WalkedPasses walked = season.walkedPasses();
    for (PassOutcome pass : season.passes()) {
      if (!pass.made()) {
        Map<WeedId, Integer> asked = offers.foliarSitesAsked(walked, pass);
        for (WeedOutcome driver : drivers) {
          WeedPressure weed = driver.pressure();
          sites(
              pass,
              driver,
              asked.getOrDefault(weed.weed().id(), 0),
              offers.soilSitesAsked(walked, pass.index(), weed),
              foliar,
              soil);
        }
      }
    }
    List<BrokenHouseRule> out = new ArrayList<>(foliar);
    out.addAll(soil);
    for (WeedOutcome w : drivers) {
      for (WeedOutcome.LayerOverlap o : HouseTests.shortOverlaps(house, w)) {
        if (season.passes().get(o.nextPass()).made()) {
          continue;
        }
        out.add(
            new BrokenHouseRule(
                MIN_LAYER_OVERLAP,
                id(w),
                OptionalInt.of(o.nextPass()),
                house.minLayerOverlapDays(),
                o.medianDays()));
      }
    }
    for (WeedOutcome w : drivers) {
      if (HouseTests.isExposed(house, w)) {
        HouseTests.Exposure e = HouseTests.exposure(house, w);
        out.add(ofSeason(MAX_EXPOSED_EMERGENCE, id(w), e.limitPct(), e.actualPct()));
      }
    }
    for (WeedOutcome w : drivers) {
      if (HouseTests.isShortOfControl(house, w)) {
        out.add(
            ofSeason(SEASON_CONTROL, id(w), HouseTests.controlAskedPct(house, w), w.controlPct()));
      }
    }
    for (WeedOutcome w : drivers) {
      if (HouseTests.isLostWithOneSite(house, w)) {
        out.add(
            ofSeason(
                ONE_SITE_GONE, id(w), 100 * house.oneSiteGone(), w.controlPctWithoutWeakest()));
      }
    }
    if (HouseTests.isShortOfWindows(house, season.windowConfidencePct())) {
      out.add(
          ofSeason(
              WINDOW_CONFIDENCE,
              Optional.empty(),
              100 * house.windowConfidence(),
              season.windowConfidencePct()));
    }
    return out;
  }

  private static void sites(
      PassOutcome pass,
      WeedOutcome driver,
      int foliarAsked,
      int soilAsked,
      List<BrokenHouseRule> foliar,
      List<BrokenHouseRule> soil) {
    for (PassWeed w : pass.weeds()) {
      if (!w.weed().equals(driver.pressure().weed().id())) {
        continue;
      }
      if (w.effectiveFoliarSites() < foliarAsked) {
        foliar.add(
            new BrokenHouseRule(
                MIN_FOLIAR_SITES,
                id(driver),
                OptionalInt.of(pass.index()),
                foliarAsked,
                w.effectiveFoliarSites()));
      }
      if (w.effectiveSoilSites() < soilAsked) {
        soil.add(
            new BrokenHouseRule(
                MIN_SOIL_SITES,
                id(driver),
                OptionalInt.of(pass.index()),
                soilAsked,
                w.effectiveSoilSites()));
      }
    }
  }

  private static Optional<WeedId> id(WeedOutcome w) {
    return Optional.of(w.pressure().weed().id());
  }

  private static BrokenHouseRule ofSeason(
      String name, Optional<WeedId> weed, double limit, double actual) {
    return new BrokenHouseRule(name, weed, OptionalInt.empty(), limit, actual);
  }
}
