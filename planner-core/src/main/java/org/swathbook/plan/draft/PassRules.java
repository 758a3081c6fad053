package org.swathbook.plan.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.check.HouseRuleCheck;
import org.swathbook.rules.HouseTests;
import org.swathbook.rules.StandingDriver;
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
   * @param lone the sites on which these last rested alone
   * @param standing what stands on its date after them; asked for only when the listener goes on
   *     after all other rules
   * @return the sites on which passes last rested alone, with it; null when the listener did not go
   *     on to the end
   */
  public @Nullable LoneSites next(
      List<Laid> before,
      LoneSites lone,
      Laid next,
      Supplier<Standing> standing,
      Listener listener) {
    if (!soilSites(before, next, listener) || !overlaps(before, next, listener)) {
      return null;
    }
    List<Met> met = met(lone, next.pass(), standing.get());
    return foliarSites(before, next, met, listener) ? with(lone, met) : null;
  }

  /**
   * @param driver its place among the driver weeds
   */
  private record Met(int driver, StandingDriver weed) {}

  /** The sites on which passes that are made last rested alone. */
  public LoneSites lone(List<Laid> made) {
    LoneSites out = LoneSites.none(drivers.size());
    List<PreparedPass> before = new ArrayList<>();
    for (Laid pass : made) {
      Standing standing = Standing.of(kernel, before, pass.pass(), drivers);
      out = with(out, met(out, pass.pass(), standing));
      before.add(pass.pass());
    }
    return out;
  }

  /** The driver weeds that stand, each with the sites of the pass that are effective on it. */
  private List<Met> met(LoneSites lone, PreparedPass next, Standing standing) {
    List<Met> out = new ArrayList<>();
    for (int d = 0; d < drivers.size(); d++) {
      int w = drivers.get(d);
      if (standing.stands(w)) {
        long sites = standing.effectiveSites(kernel, next, w);
        WeedPressure weed = kernel.traces().weeds().get(w);
        out.add(new Met(d, new StandingDriver(weed, sites, lone.byDriver().get(d))));
      }
    }
    return out;
  }

  private static LoneSites with(LoneSites lone, List<Met> met) {
    List<Long> out = new ArrayList<>(lone.byDriver());
    for (Met m : met) {
      if (HouseTests.isLone(m.weed().sites())) {
        out.set(m.driver(), m.weed().sites());
      }
    }
    return new LoneSites(out);
  }

  private boolean soilSites(List<Laid> before, Laid next, Listener listener) {
    for (int d = 0; d < drivers.size(); d++) {
      int missed = soilSitesAsked(before, next, d) - next.layers().get(d).effectiveSites();
      if (missed > 0 && !tell(listener, HouseRuleCheck.MIN_SOIL_SITES, missed)) {
        return false;
      }
    }
    return true;
  }

  /** None where the pass lays no layer against the driver weed. */
  private int soilSitesAsked(List<Laid> before, Laid next, int driver) {
    return isLayer(next, driver)
        ? offers.soilSitesAsked(
            kernel.traces().weeds().get(drivers.get(driver)),
            HouseTests.soilSitesOfLayer(house, isFirst(before, driver)))
        : 0;
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

  private boolean foliarSites(List<Laid> before, Laid next, List<Met> met, Listener listener) {
    List<StandingDriver> standing = met.stream().map(Met::weed).toList();
    int[] asked =
        offers.foliarSitesAsked(standing, next.pass().timing(), mostSoilSites(before, next));
    for (int i = 0; i < asked.length; i++) {
      int missed = asked[i] - standing.get(i).has();
      if (missed > 0 && !tell(listener, HouseRuleCheck.MIN_FOLIAR_SITES, missed)) {
        return false;
      }
    }
    return true;
  }

  /** Soil sites that a pass owes the driver weed to which it owes most. */
  private int mostSoilSites(List<Laid> before, Laid next) {
    int most = 0;
    for (int d = 0; d < drivers.size(); d++) {
      most = Math.max(most, soilSitesAsked(before, next, d));
    }
    return most;
  }

  private static boolean tell(Listener listener, String rule, double missed) {
    return listener.missed(rule, HouseDeficit.of(rule, missed));
  }
}
