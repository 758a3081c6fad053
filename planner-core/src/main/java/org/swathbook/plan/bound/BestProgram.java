package org.swathbook.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Of all programs the one that costs least at some prices. Each tank is found by itself, among all
 * that the masks let stand together; the days by dynamic programming, since passes need only lie
 * apart. Caps, counts and intervals are not asked: what costs least among more programs costs no
 * more.
 */
final class BestProgram {
  private final AllDoses all;
  private final Prices prices;

  /** A tank of a day, and what it costs less what it saves: nothing without one. */
  private record Found(List<Part> parts, double worth) {
    private static final Found NONE = new Found(List.of(), 0);
  }

  private BestProgram(AllDoses all, Prices prices) {
    this.all = all;
    this.prices = prices;
  }

  /** Its tanks by day; none when any pass costs more than it saves. */
  static List<Tank> of(AllDoses all, Prices prices) {
    return new BestProgram(all, prices).find();
  }

  /** The best tank of one day; none when every one costs more than it saves. */
  static Optional<Tank> ofDay(AllDoses all, Prices prices, int day) {
    Found found = new BestProgram(all, prices).new DayTanks(day).best();
    return found.parts.isEmpty() ? Optional.empty() : Optional.of(Tank.of(all, found.parts));
  }

  private List<Tank> find() {
    int days = all.days().size();
    List<Found> found = new ArrayList<>();
    for (int d = 0; d < days; d++) {
      found.add(new DayTanks(d).best());
    }
    int most = all.maxPasses();
    double[][] sum = new double[most + 1][days + 1];
    for (int left = 1; left <= most; left++) {
      for (int d = days - 1; d >= 0; d--) {
        double with = found.get(d).worth + sum[left - 1][all.firstAfter(d)];
        sum[left][d] = Math.min(sum[left][d + 1], with);
      }
    }
    List<Tank> out = new ArrayList<>();
    int left = most;
    int d = 0;
    while (left > 0 && d < days) {
      if (sum[left][d] < sum[left][d + 1]) {
        out.add(Tank.of(all, found.get(d).parts));
        d = all.firstAfter(d);
        left--;
      } else {
        d++;
      }
    }
    return out;
  }

  /** The tanks of one day: the best that saves more than it costs is sought, if any. */
  private final class DayTanks {
    private final int day;
    private final double sprayed;

    /** What may go into them, the best first. */
    private final List<Offer> offers = new ArrayList<>();

    private Found best = Found.NONE;

    /**
     * A part on offer.
     *
     * @param saves at most
     * @param least what it adds to the cost of a tank at least, less what it saves
     */
    private record Offer(Part part, double saves, double least) {}

    DayTanks(int day) {
      this.day = day;
      Day parts = all.days().get(day);
      this.sprayed = (double) (all.years() - parts.mostMissed()) / all.years();
      for (Part p : parts.parts()) {
        double saves = prices.saves(p.site(), day, p.reach());
        offers.add(new Offer(p, saves, sprayed * p.cost() + prices.ofUse(p) - saves));
      }
      offers.sort(Comparator.comparingDouble(Offer::least));
    }

    Found best() {
      add(new ArrayList<>(), 0, prices.ofPass(day) + sprayed * all.passCost());
      return best;
    }

    /**
     * Adds one more part in every way that may lead to a better tank.
     *
     * @param sum what the tank costs at least
     */
    private void add(List<Offer> tank, int from, double sum) {
      int room = all.maxProducts() - tank.size();
      for (int i = from; i < offers.size() && room > 0; i++) {
        Offer next = offers.get(i);
        if (sum + Math.min(next.least, room * next.least) >= best.worth) {
          // None of those that come after does more.
          return;
        }
        if (tank.stream().allMatch(o -> all.mix(o.part, next.part))) {
          tank.add(next);
          if (sum + next.least < best.worth) {
            consider(tank);
          }
          add(tank, i + 1, sum + next.least);
          tank.remove(tank.size() - 1);
        }
      }
    }

    private void consider(List<Offer> tank) {
      List<Part> parts = tank.stream().map(Offer::part).toList();
      Set<Integer> missed = Tank.missed(parts);
      double costs = prices.ofPass(day) + Tank.cost(all, parts);
      for (int i = 0; i < tank.size() && costs - leftToSave(tank, i) < best.worth; i++) {
        Part part = parts.get(i);
        costs += prices.ofUse(part);
        List<Part> ofOneSite = parts.stream().filter(p -> p.site().equals(part.site())).toList();
        boolean first = ofOneSite.get(0).option().index() == part.option().index();
        if (ofOneSite.size() == 1 && part.missed().equals(missed)) {
          costs -= tank.get(i).saves;
        } else if (first) {
          costs -= prices.saves(part.site(), day, all.strongest(ofOneSite, missed));
        }
      }
      if (costs < best.worth) {
        best = new Found(parts, costs);
      }
    }

    private double leftToSave(List<Offer> tank, int from) {
      double sum = 0;
      for (Offer o : tank.subList(from, tank.size())) {
        sum += o.saves;
      }
      return sum;
    }
  }
}
