package org.swathbook.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Biotype;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Site;
import org.swathbook.control.MixEffect;
import org.swathbook.control.ResidualCurve;
import org.swathbook.control.ResistanceFactors;
import org.swathbook.control.SoilReach;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Quantity;
import org.swathbook.season.outcome.SiteControl;

/** What each site of a pass does to a weed by itself, through leaves and through the soil apart. */
final class SiteCounts {
  private final Kernel kernel;
  private final HouseRules house;
  private final TraceSet traces;

  SiteCounts(Kernel kernel) {
    this.kernel = kernel;
    this.house = kernel.house();
    this.traces = kernel.traces();
  }

  /** Which sites of {@link #foliar} are effective: bit n for site n. */
  long effectiveFoliar(PreparedPass pass, int weed, boolean[] stands, int[] heightClass) {
    MixEffect effect = pass.effect();
    long sites = 0;
    for (int a = 0; a < effect.actives().size(); a++) {
      Ingredient active = effect.actives().get(a).ingredient();
      if (active.foliar().isNone() || effect.isStruck(a, weed) || pass.isSlowed(a)) {
        continue;
      }
      double pct = foliarPct(pass, a, weed, stands, heightClass);
      if (!Double.isNaN(pct) && !Quantity.exceeds(100 * house.effectiveSite(), pct)) {
        sites |= 1L << active.site().number();
      }
    }
    return sites;
  }

  /** Mean over the years in which the pass is made and the weed stands, percent; NaN for none. */
  private double foliarPct(
      PreparedPass pass, int active, int weed, boolean[] stands, int[] heightClass) {
    double felt = pass.effect().feltThroughLeaves(active, weed);
    double sum = 0;
    int years = 0;
    for (int y = 0; y < stands.length; y++) {
      if (stands[y] && !pass.isMissed(y)) {
        sum += felt * kernel.foliar(pass, y, weed).alone(active, heightClass[y]);
        years++;
      }
    }
    return years > 0 ? 100 * sum / years : Double.NaN;
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // there are no arrays of generic lists
  static @Nullable List<SiteControl>[] none(int weeds) {
    return (List<SiteControl>[]) new List[weeds];
  }

  /**
   * Means over the years in which the pass is made and the weed stands; empty when in none.
   *
   * @param heightClass by year, of the plants by which the pass is judged
   */
  List<SiteControl> foliar(PreparedPass pass, int weed, boolean[] stands, int[] heightClass) {
    MixEffect effect = pass.effect();
    WeedPressure pressure = traces.weeds().get(weed);
    Map<Site, List<SiteControl>> bySite = new TreeMap<>();
    for (int a = 0; a < effect.actives().size(); a++) {
      Ingredient active = effect.actives().get(a).ingredient();
      if (active.foliar().isNone()) {
        continue;
      }
      double pct = foliarPct(pass, a, weed, stands, heightClass);
      if (!Double.isNaN(pct)) {
        add(
            bySite,
            pressure,
            active,
            pct,
            house.effectiveSite(),
            effect.isStruck(a, weed),
            pass.isSlowed(a));
      }
    }
    return best(bySite);
  }

  /** Means over the years in which the pass is made; empty when in none. The pass keeps it. */
  List<SiteControl> soil(PreparedPass pass, int weed) {
    WeedPressure pressure = traces.weeds().get(weed);
    MixEffect effect = pass.effect();
    Map<Site, List<SiteControl>> bySite = new TreeMap<>();
    for (int a = 0; a < effect.actives().size(); a++) {
      Ingredient active = effect.actives().get(a).ingredient();
      if (!active.hasSoilActivity()) {
        continue;
      }
      double fresh = effect.fresh(a, weed).orElse(0) * feltInSoil(pressure, active);
      double sum = 0;
      int years = 0;
      for (int y = 0; y < traces.years().size(); y++) {
        if (!pass.isMissed(y)) {
          sum += fresh * firstDays(effect.residual(a, y, pass.day(y)).orElseThrow());
          years++;
        }
      }
      if (years > 0) {
        add(
            bySite,
            pressure,
            active,
            100 * sum / years,
            house.effectiveSoilSite(),
            effect.isStruck(a, weed),
            false);
      }
    }
    return best(bySite);
  }

  private static double firstDays(ResidualCurve curve) {
    int from = Math.max(curve.activeFrom(), curve.appliedOn() + 1);
    double sum = 0;
    for (int d = 0; d < SoilReach.FIRST_DAYS; d++) {
      sum += curve.share(from + d);
    }
    return sum / SoilReach.FIRST_DAYS;
  }

  private static double feltInSoil(WeedPressure pressure, Ingredient active) {
    double sum = 0;
    for (Biotype b : pressure.biotypes()) {
      sum += b.share() * ResistanceFactors.soil(pressure.weed(), b, active);
    }
    return Math.min(1, sum);
  }

  private static void add(
      Map<Site, List<SiteControl>> to,
      WeedPressure pressure,
      Ingredient active,
      double pct,
      double threshold,
      boolean struck,
      boolean slowed) {
    boolean enough = !Quantity.exceeds(100 * threshold, pct);
    to.computeIfAbsent(active.site(), s -> new ArrayList<>())
        .add(
            new SiteControl(
                active.site(),
                active.id(),
                pct,
                struck,
                pressure.isOnlyWatched(active),
                slowed,
                !struck && !slowed && enough));
  }

  /** Of the actives of a site the one that does most; one that is not struck before one that is. */
  private static List<SiteControl> best(Map<Site, List<SiteControl>> bySite) {
    List<SiteControl> out = new ArrayList<>();
    for (List<SiteControl> of : bySite.values()) {
      SiteControl best = of.get(0);
      for (SiteControl s : of) {
        if (best.struck() != s.struck() ? best.struck() : s.controlPct() > best.controlPct()) {
          best = s;
        }
      }
      out.add(best);
    }
    return out;
  }
}
