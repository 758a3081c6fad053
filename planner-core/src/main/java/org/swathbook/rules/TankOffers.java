package org.swathbook.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Ordered;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.TankTerms;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedId;
import org.swathbook.control.FoliarReach;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.TraceSet;

/**
 * How many foliar sites a house can ask of one tank against a weed of a field. The house names a
 * number; crop, traits, listed resistance and what the labels say of partners and droplets may
 * leave fewer that can stand in one tank, and then so many are asked, one at the least: the season
 * brings the others in passes of their own, and has to hold with any one site gone (default, ours).
 *
 * <p>A site counts as to be had when the catalog has an active of it that is labelled there and, at
 * the top of its range, works on the smallest plants: on plants that were let grow the pass still
 * owes it. Whether a product is priced or in store does not matter. Keeps what it computes; several
 * threads may ask.
 */
public final class TankOffers {
  private final Book book;
  private final TraceSet traces;
  private final SoilOffers soil;
  private final Map<Asked, Integer> known = new ConcurrentHashMap<>();

  private record Asked(WeedId weed, Set<Position> positions, Method method) {
    // Written out, as in every key that is hashed at a start: see RuleId.
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Asked o
          && weed.equals(o.weed)
          && positions.equals(o.positions)
          && method == o.method;
    }

    @Override
    public int hashCode() {
      return 31 * (31 * weed.hashCode() + positions.hashCode()) + method.hashCode();
    }
  }

  /** An active with those of its uses that are open to a pass. */
  record Offer(Ingredient active, List<Use> uses) {}

  public TankOffers(Book book, TraceSet traces) {
    this.book = book;
    this.traces = traces;
    this.soil = new SoilOffers(book, traces);
  }

  /**
   * Effective soil sites that a pass owes a driver weed; see {@link SoilOffers}.
   *
   * @param wanted what the house would have of it, 0 when it lays no layer
   * @param effective that it has; where these are enough nothing is looked up
   */
  public int soilSitesAsked(WeedPressure weed, int wanted, int effective) {
    return effective >= wanted ? wanted : soil.asked(weed, wanted);
  }

  /** Soil sites that hold against the weed by themselves at some time of the season. */
  public SortedSet<Site> soilSites(WeedPressure weed) {
    return soil.sites(weed);
  }

  /**
   * Effective foliar sites that a broadcast pass owes a driver weed: none when it does not stand.
   *
   * @param effective that it has; where these are enough nothing is looked up
   */
  public int foliarSitesAsked(WeedPressure weed, PassTiming timing, boolean stands, int effective) {
    int wanted = HouseTests.foliarSitesWanted(book.house(), stands);
    return effective >= wanted
        ? wanted
        : inOneTank(weed, wanted, PassPositions.of(traces, timing), Method.BROADCAST);
  }

  /** The same at a pass as it is judged. */
  int foliarSitesAsked(WeedPressure weed, PassFacts facts, boolean stands, int effective) {
    int wanted = HouseTests.foliarSitesWanted(book.house(), stands);
    return effective >= wanted
        ? wanted
        : inOneTank(weed, wanted, facts.positions(), facts.method());
  }

  /** As many of those that are wanted as one tank can bring. */
  private int inOneTank(WeedPressure weed, int wanted, Set<Position> positions, Method method) {
    // One is asked even where there is none: what the pass leaves standing is to be seen.
    return wanted <= 1
        ? wanted
        : Math.max(
            1,
            known.computeIfAbsent(
                new Asked(weed.weed().id(), Ordered.set(positions), method),
                k -> inOneTank(offers(weed, k.positions, method), List.of(), wanted)));
  }

  private List<Offer> offers(WeedPressure weed, Set<Position> positions, Method method) {
    Catalog catalog = book.catalog();
    Field field = traces.field();
    Position.Phase phase =
        LabelUses.phase(positions) == Position.Phase.IN_CROP
            ? Position.Phase.IN_CROP
            : Position.Phase.BEFORE_EMERGENCE;
    List<Offer> out = new ArrayList<>();
    for (Ingredient active : catalog.ingredients()) {
      List<Use> uses = Offers.open(active, field, positions, method);
      if (!uses.isEmpty()
          && !Rated.isResisted(weed, active)
          && FoliarReach.onSmallPlants(catalog, active, weed.weed(), phase).orElse(0)
              >= book.house().effectiveSite()) {
        out.add(new Offer(active, uses));
      }
    }
    return out;
  }

  /** Most sites, up to a number, that can be added to a tank from the rest of the offers. */
  static int inOneTank(List<Offer> rest, List<Offer> tank, int wanted) {
    int most = 0;
    for (int i = 0; i < rest.size() && most < wanted; i++) {
      Offer next = rest.get(i);
      if (tank.stream().allMatch(o -> mix(o, next))) {
        List<Offer> with = new ArrayList<>(tank);
        with.add(next);
        most = Math.max(most, 1 + inOneTank(rest.subList(i + 1, rest.size()), with, wanted - 1));
      }
    }
    return most;
  }

  /** Of two sites, and in some use of each no label keeps the other away. */
  private static boolean mix(Offer a, Offer b) {
    if (a.active.site().equals(b.active.site())) {
      return false;
    }
    for (Use one : a.uses) {
      for (Use other : b.uses) {
        if (takes(one.terms().tank(), b.active)
            && takes(other.terms().tank(), a.active)
            && haveDropletsInCommon(one.terms().tank(), other.terms().tank())) {
          return true;
        }
      }
    }
    return false;
  }

  /** A list that the catalog does not hold refuses nobody; the judgement of a tank asks for it. */
  private static boolean takes(TankTerms keeper, Ingredient partner) {
    return keeper.partners().find().map(l -> l.allows(partner.id())).orElse(true);
  }

  private static boolean haveDropletsInCommon(TankTerms a, TankTerms b) {
    return a.droplets().find().isEmpty()
        || b.droplets().find().isEmpty()
        || a.droplets().find().get().meets(b.droplets().find().get());
  }
}
