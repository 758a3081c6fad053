package org.swathbook.plan.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.swathbook.book.Book;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Site;
import org.swathbook.control.Effects;
import org.swathbook.control.MixEffect;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Mix;

/**
 * Which options can at all count as an effective site on a driver weed, from what they do to the
 * smallest plants and the listed resistance alone: a figure below the house level, rated on plants
 * of the control height, may be above it on smaller ones. It only orders the search; what counts in
 * a program is the walked season.
 */
public final class Strengths {
  private final List<WeedPressure> drivers;
  private final boolean[][] foliar;
  private final boolean[][] soil;

  public Strengths(Book book, TraceSet traces, List<DoseOption> options) {
    List<WeedPressure> named = traces.weeds().stream().filter(w -> w.driver().isDriver()).toList();
    this.drivers = named.isEmpty() ? traces.weeds() : named;
    foliar = new boolean[options.size()][drivers.size()];
    soil = new boolean[options.size()][drivers.size()];
    HouseRules house = book.house();
    Effects effects = new Effects(book.catalog(), traces);
    for (DoseOption o : options) {
      Ingredient active = book.catalog().ingredient(o.ingredient());
      MixEffect alone = effects.of(Mix.of(List.of(o.dose())));
      for (int w = 0; w < drivers.size(); w++) {
        WeedPressure weed = drivers.get(w);
        int place = traces.weeds().indexOf(weed);
        boolean struck = weed.listed().stream().anyMatch(r -> r.concerns(active));
        if (!struck) {
          foliar[o.index()][w] =
              active.hasFoliarActivity()
                  && Math.max(
                          onSmallest(alone, place, Position.Phase.IN_CROP),
                          onSmallest(alone, place, Position.Phase.BEFORE_EMERGENCE))
                      >= house.effectiveSite();
          soil[o.index()][w] =
              active.hasSoilActivity()
                  && soilPct(book.catalog(), weed, active) >= 100 * house.effectiveSoilSite();
        }
      }
    }
  }

  private static double onSmallest(MixEffect alone, int weed, Position.Phase phase) {
    return alone.foliar(weed, phase).alone(0, 0);
  }

  private static double soilPct(Catalog catalog, WeedPressure weed, Ingredient active) {
    Optional<Response> r =
        catalog.response(weed.weed().id(), active.id(), Response.Timing.PRE).find();
    return r.map(Response::emaxPct).orElse(0.0);
  }

  public List<WeedPressure> drivers() {
    return drivers;
  }

  public boolean foliar(int option, int driver) {
    return foliar[option][driver];
  }

  public boolean soil(int option, int driver) {
    return soil[option][driver];
  }

  /** Sites still missing to the numbers wanted, added over the driver weeds. */
  public int missing(
      List<Integer> tank, int foliarWanted, int soilWanted, IntFunction<Site> siteOf) {
    int missing = 0;
    for (int w = 0; w < drivers.size(); w++) {
      List<Site> f = new ArrayList<>();
      List<Site> s = new ArrayList<>();
      for (int o : tank) {
        Site site = siteOf.apply(o);
        if (foliar[o][w] && !f.contains(site)) {
          f.add(site);
        }
        if (soil[o][w] && !s.contains(site)) {
          s.add(site);
        }
      }
      missing += Math.max(0, foliarWanted - f.size()) + Math.max(0, soilWanted - s.size());
    }
    return missing;
  }
}
