package org.swathbook.plan.draft;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.swathbook.book.HouseRules;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.TankOffers;
import org.swathbook.season.Kernel;
import org.swathbook.season.PassLayers;
import org.swathbook.season.PreparedPass;
import org.swathbook.season.SeasonWalk;
import org.swathbook.season.Standing;
import org.swathbook.season.outcome.WeedOutcome;

/**
 * The house rules that a pass settles with those before it, whatever comes after them: foliar sites
 * on what stands, soil sites of a layer, overlaps of layers that follow each other, and windows
 * met. They say what a walk of the season says, and take a small part of its time. What a pass that
 * is made lacks is not held against a program, so nobody asks for it. Keeps what it computes;
 * confined to one thread.
 */
public final class PassRules {
  private final Kernel kernel;
  private final HouseRules house;
  private final TankOffers offers;
  private final List<Integer> drivers;
  private final Map<Pair, WeedOutcome.LayerOverlap> overlaps = new HashMap<>();

  /** Of one weed; the layers of passes alike are the same ones. */
  private record Pair(PassLayers first, PassLayers next) {}

  /** Hears by how far a house rule is missed, as {@link HouseDeficit} counts it. */
  public interface Listener {

    /** Tells whether to go on. */
    boolean missed(String rule, double deficit);
  }

  public PassRules(Kernel kernel, HouseRules house, TankOffers offers) {
    this.kernel = kernel;
    this.house = house;
    this.offers = offers;
    this.drivers = kernel.drivers();
  }

  /** By how far the windows of the passes are missed; 0 when they are met often enough. */
  public double windows(List<PreparedPass> passes) {
    double pct = SeasonWalk.windowConfidencePct(passes, kernel.traces().years().size());
    return HouseTests.isShortOfWindows(house, pct)
        ? HouseDeficit.of(HouseRuleCheck.WINDOW_CONFIDENCE, 100 * house.windowConfidence() - pct)
        : 0;
  }

  /**
   * What one more pass misses of sites and overlaps.
   *
   * @param before the passes before it, those made first
   * @param standing what stands on its date after them; asked for only when the listener goes on
   *     after all other rules
   * @return whether the listener went on to the end
   */
  public boolean next(
      List<Laid> before, Laid next, Supplier<Standing> standing, Listener listener) {
    return soilSites(before, next, listener)
        && overlaps(before, next, listener)
        && foliarSites(next.pass(), standing.get(), listener);
  }

  private boolean soilSites(List<Laid> before, Laid next, Listener listener) {
    for (int d = 0; d < drivers.size(); d++) {
      if (isLayer(next, d)) {
        int has = next.layers().get(d).effectiveSites();
        int asked =
            offers.soilSitesAsked(
                kernel.traces().weeds().get(drivers.get(d)),
                HouseTests.soilSitesOfLayer(house, isFirst(before, d)),
                has);
        if (has < asked && !tell(listener, HouseRuleCheck.MIN_SOIL_SITES, asked - has)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean isFirst(List<Laid> before, int driver) {
    for (Laid p : before) {
      if (isLayer(p, driver)) {
        return false;
      }
    }
    return true;
  }

  private boolean isLayer(Laid pass, int driver) {
    return HouseTests.isLayer(pass.layers().get(driver).years(), kernel.traces().years().size());
  }

  private boolean overlaps(List<Laid> before, Laid next, Listener listener) {
    for (int d = 0; d < drivers.size(); d++) {
      int last = next.layers().get(d).inSomeYear() ? lastWithLayer(before, d) : -1;
      if (last >= 0) {
        WeedOutcome.LayerOverlap o = overlap(before.get(last), next, d);
        double missed = HouseDeficit.missed(house.minLayerOverlapDays(), o.medianDays());
        if (HouseTests.isShort(house, o)
            && !tell(listener, HouseRuleCheck.MIN_LAYER_OVERLAP, missed)) {
          return false;
        }
      }
    }
    return true;
  }

  private static int lastWithLayer(List<Laid> passes, int driver) {
    int p = passes.size() - 1;
    while (p >= 0 && !passes.get(p).layers().get(driver).inSomeYear()) {
      p--;
    }
    return p;
  }

  private WeedOutcome.LayerOverlap overlap(Laid first, Laid next, int driver) {
    return overlaps.computeIfAbsent(
        new Pair(first.layers().get(driver), next.layers().get(driver)),
        p -> p.first().overlap(kernel, drivers.get(driver), p.next()));
  }

  private boolean foliarSites(PreparedPass next, Standing standing, Listener listener) {
    for (int w : drivers) {
      if (standing.stands(w)) {
        int has = standing.effectiveSites(kernel, next, w);
        int asked =
            offers.foliarSitesAsked(kernel.traces().weeds().get(w), next.timing(), true, has);
        if (has < asked && !tell(listener, HouseRuleCheck.MIN_FOLIAR_SITES, asked - has)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean tell(Listener listener, String rule, double missed) {
    return listener.missed(rule, HouseDeficit.of(rule, missed));
  }
}
