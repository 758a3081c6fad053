package org.swathbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.swathbook.book.Book;
import org.swathbook.book.HouseRules;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Site;
import org.swathbook.growth.TraceSet;

/**
 * Which options can at all count as an effective site on a driver weed, from the catalog's figures
 * and the listed resistance alone. It only orders the search; what counts in a program is the
 * walked season.
 */
final class Strengths {
  private final List<WeedPressure> drivers;
  private final boolean[][] foliar;
  private final boolean[][] soil;

  Strengths(Book book, TraceSet traces, List<DoseOption> options) {
    List<WeedPressure> named = traces.weeds().stream().filter(w -> w.driver().isDriver()).toList();
    this.drivers = named.isEmpty() ? traces.weeds() : named;
    foliar = new boolean[options.size()][drivers.size()];
    soil = new boolean[options.size()][drivers.size()];
    HouseRules house = book.house();
    for (DoseOption o : options) {
      Ingredient active = book.catalog().ingredient(o.ingredient());
      for (int w = 0; w < drivers.size(); w++) {
        WeedPressure weed = drivers.get(w);
        boolean struck = weed.listed().stream().anyMatch(r -> r.concerns(active));
        if (!struck) {
          foliar[o.index()][w] =
              active.hasFoliarActivity()
                  && Math.max(
                          emax(book.catalog(), weed, active, Response.Timing.POST),
                          emax(book.catalog(), weed, active, Response.Timing.BURNDOWN))
                      >= 100 * house.effectiveSite();
          soil[o.index()][w] =
              active.hasSoilActivity()
                  && emax(book.catalog(), weed, active, Response.Timing.PRE)
                      >= 100 * house.effectiveSoilSite();
        }
      }
    }
  }

  private static double emax(
      Catalog catalog, WeedPressure weed, Ingredient active, Response.Timing timing) {
    Optional<Response> r = catalog.response(weed.weed().id(), active.id(), timing).find();
    return r.map(Response::emaxPct).orElse(0.0);
  }

  List<WeedPressure> drivers() {
    return drivers;
  }

  boolean foliar(int option, int driver) {
    return foliar[option][driver];
  }

  boolean soil(int option, int driver) {
    return soil[option][driver];
  }

  /** Sites still missing to the numbers wanted, added over the driver weeds. */
  int missing(List<Integer> tank, int foliarWanted, int soilWanted, IntFunction<Site> siteOf) {
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
