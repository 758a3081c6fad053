package org.swathbook.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.SoilRates;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Method;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedId;
import org.swathbook.control.SoilReach;
import org.swathbook.growth.TraceSet;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.RateRange;

/**
 * How many soil sites a house can ask of a layer against a weed of a field. The house names a
 * number; against some weeds crop, traits, soil, listed resistance and what the labels say of
 * partners leave fewer that hold by themselves, and then so many are asked, one at the least
 * (default, ours): a house that asked for what nobody can lay would get no layer at all.
 *
 * <p>A site counts as to be had when at some time of the season the catalog has an active of it
 * that is labelled there and, at the top of what its label allows on the soil, holds the house's
 * share over its first days. When a pass goes out does not matter, so that no layer is laid late in
 * order to owe less. Caps, intervals and prices are not looked at. Keeps what it computes; several
 * threads may ask.
 */
final class SoilOffers {
  private final Book book;
  private final TraceSet traces;
  private final Map<WeedId, ToBeHad> known = new ConcurrentHashMap<>();

  /**
   * @param sites all of them
   * @param inOneTank the most that can stand in one
   */
  private record ToBeHad(SortedSet<Site> sites, int inOneTank) {}

  SoilOffers(Book book, TraceSet traces) {
    this.book = book;
    this.traces = traces;
  }

  /** Of the sites that are wanted as many as can be had in one tank, one at the least. */
  int asked(WeedPressure weed, int wanted) {
    // One is asked even where there is none: what comes up through the layer is to be seen.
    return wanted <= 1 ? wanted : Math.min(wanted, Math.max(1, toBeHad(weed).inOneTank()));
  }

  /** All that hold by themselves, in one tank or not. */
  SortedSet<Site> sites(WeedPressure weed) {
    return toBeHad(weed).sites();
  }

  private ToBeHad toBeHad(WeedPressure weed) {
    return known.computeIfAbsent(weed.weed().id(), w -> find(weed));
  }

  private ToBeHad find(WeedPressure weed) {
    int asMany = Math.max(book.house().minSoilSitesFirst(), book.house().minSoilSitesOverlap());
    SortedSet<Site> sites = new TreeSet<>();
    int most = 0;
    for (Position position : Position.values()) {
      if (position.phase() != Position.Phase.AFTER_HARVEST) {
        List<Offer> offers = offers(weed, position);
        offers.forEach(o -> sites.add(o.active().site()));
        most = Math.max(most, inOneTank(offers, List.of(), asMany));
      }
    }
    return new ToBeHad(sites, most);
  }

  private List<Offer> offers(WeedPressure weed, Position position) {
    List<Offer> out = new ArrayList<>();
    for (Ingredient active : book.catalog().ingredients()) {
      if (active.hasSoilActivity() && !Rated.isResisted(weed, active)) {
        List<Use> uses =
            Offers.open(active, traces.field(), Set.of(position), Method.BROADCAST).stream()
                .filter(u -> holds(weed, active, u))
                .toList();
        if (!uses.isEmpty()) {
          out.add(new Offer(active, uses));
        }
      }
    }
    return out;
  }

  private boolean holds(WeedPressure weed, Ingredient active, Use use) {
    Field field = traces.field();
    Optional<RateRange> rates = rates(use, field);
    if (rates.isEmpty()) {
      return false;
    }
    OptionalDouble share =
        SoilReach.ofDose(book.catalog(), field, active, rates.get().high().kgPerHa(), weed.weed());
    return share.isPresent()
        && !Quantity.exceeds(book.house().effectiveSoilSite(), share.getAsDouble());
  }

  /** A soil that the field does not tell refuses nothing; the judgement of a tank asks for it. */
  private static Optional<RateRange> rates(Use use, Field field) {
    SoilRates here = SoilRates.of(use, field);
    if (here instanceof SoilRates.Allowed a) {
      return a.range().low().kgPerHa() <= a.range().high().kgPerHa()
          ? Optional.of(a.range())
          : Optional.empty();
    }
    return here instanceof SoilRates.Unknown ? SoilRates.onAnySoil(use) : Optional.empty();
  }

  /** Most sites, up to a number, that can be added to a tank from the rest of the offers. */
  private static int inOneTank(List<Offer> rest, List<Offer> tank, int wanted) {
    int most = 0;
    for (int i = 0; i < rest.size() && most < wanted; i++) {
      Offer next = rest.get(i);
      if (tank.stream().allMatch(o -> isOtherSite(o, next) && o.mixesWith(next))) {
        List<Offer> with = new ArrayList<>(tank);
        with.add(next);
        most = Math.max(most, 1 + inOneTank(rest.subList(i + 1, rest.size()), with, wanted - 1));
      }
    }
    return most;
  }

  private static boolean isOtherSite(Offer a, Offer b) {
    return !a.active().site().equals(b.active().site());
  }
}
