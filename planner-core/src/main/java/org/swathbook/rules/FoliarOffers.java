package org.swathbook.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.SoilRates;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.control.ColdDay;
import org.swathbook.control.FoliarReach;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.TraceSet;
import org.swathbook.rules.timing.PlantingWait;

/**
 * What the catalog has through leaves against some weeds at a pass, and how much of it a tank can
 * hold: an active that is labelled there, on that soil, in that state and so long before planting,
 * that no listed resistance strikes, that the cold does not slow, and that at the top of its range
 * works on the smallest plants – on plants that were let grow the pass still owes it. Whether a
 * product is priced or in store does not matter.
 */
final class FoliarOffers {

  /**
   * @param sites the site of the offer where it works on a weed, else 0; by weed, bit n for site n
   */
  private record Against(Offer offer, List<Long> sites) {}

  private final List<Against> offers;
  private final int weeds;
  private final int wanted;

  private FoliarOffers(List<Against> offers, int weeds, int wanted) {
    this.offers = offers;
    this.weeds = weeds;
    this.wanted = wanted;
  }

  /**
   * @param cold whether the pass goes out in the cold
   * @param wanted sites on each weed; more are not counted
   */
  static FoliarOffers of(
      Book book,
      TraceSet traces,
      PassTiming timing,
      List<WeedPressure> weeds,
      Set<Position> positions,
      Method method,
      boolean cold,
      int wanted) {
    Field field = traces.field();
    Catalog catalog = book.catalog();
    Position.Phase phase =
        LabelUses.phase(positions) == Position.Phase.IN_CROP
            ? Position.Phase.IN_CROP
            : Position.Phase.BEFORE_EMERGENCE;
    List<Against> offers = new ArrayList<>();
    for (Ingredient active : catalog.ingredients()) {
      List<Use> uses =
          Offers.open(active, field, positions, method).stream()
              .filter(u -> leavesTime(u, traces, timing))
              .toList();
      if (uses.isEmpty() || cold && ColdDay.slows(active)) {
        continue;
      }
      List<Long> sites = new ArrayList<>();
      for (WeedPressure weed : weeds) {
        boolean works =
            !Rated.isResisted(weed, active)
                && FoliarReach.onSmallPlants(catalog, field, active, uses, weed.weed(), phase)
                        .orElse(0)
                    >= book.house().effectiveSite();
        sites.add(works ? 1L << active.site().number() : 0);
      }
      if (sites.stream().anyMatch(s -> s != 0)) {
        offers.add(new Against(new Offer(active, uses), sites));
      }
    }
    return new FoliarOffers(offers, weeds.size(), wanted);
  }

  /** Whether its highest rate on the field's soil leaves the days to planting that it asks for. */
  private static boolean leavesTime(Use use, TraceSet traces, PassTiming timing) {
    return !(SoilRates.of(use, traces.field()) instanceof SoilRates.Allowed a)
        || PlantingWait.isMetInMostYears(use, a.range().high().lbPerAcre(), traces, timing);
  }

  /** Sites on a weed, up to those wanted, in as many tanks as it takes. */
  int inAnyTank(int weed) {
    long all = 0;
    for (Against o : offers) {
      all |= o.sites.get(weed);
    }
    return Math.min(wanted, Long.bitCount(all));
  }

  /**
   * Most sites that one tank of at most so many actives brings on one weed, or on all together; on
   * each no more count than are wanted.
   */
  int inOneTank(int actives, int... on) {
    return most(0, List.of(), new long[weeds], actives, on);
  }

  private int most(int from, List<Against> tank, long[] has, int room, int[] on) {
    int most = count(has, on);
    for (int i = from; i < offers.size() && room > 0 && most < wanted * on.length; i++) {
      Against next = offers.get(i);
      if (tank.stream().allMatch(o -> o.offer.mixesWith(next.offer))) {
        List<Against> with = new ArrayList<>(tank);
        with.add(next);
        long[] then = has.clone();
        for (int w = 0; w < then.length; w++) {
          then[w] |= next.sites.get(w);
        }
        most = Math.max(most, most(i + 1, with, then, room - 1, on));
      }
    }
    return most;
  }

  private int count(long[] has, int[] on) {
    int sum = 0;
    for (int w : on) {
      sum += Math.min(wanted, Long.bitCount(has[w]));
    }
    return sum;
  }
}
