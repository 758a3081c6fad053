package org.swathbook.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.swathbook.season.Reach;

/**
 * Of all programs the one that costs least at some prices. Each tank is found by itself, among all
 * that the masks let stand together; the days by dynamic programming, since passes need only lie
 * apart. Caps, counts and intervals are not asked: what costs least among more programs costs no
 * more.
 */
final class BestProgram {
  private final AllDoses all;
  private final Prices prices;

  /** Of the day that is looked at, the best first. */
  private final List<Offer> offers = new ArrayList<>();

  private double best;
  private List<Offer> bestParts = List.of();

  /**
   * A part on offer.
   *
   * @param saves at most
   * @param least what it adds to the cost of a tank at least, less what it saves
   */
  private record Offer(Part part, double saves, double least) {}

  private BestProgram(AllDoses all, Prices prices) {
    this.all = all;
    this.prices = prices;
  }

  /** Its tanks by day; none when any pass costs more than it saves. */
  static List<Tank> of(AllDoses all, Prices prices) {
    return new BestProgram(all, prices).find();
  }

  private List<Tank> find() {
    int days = all.days().size();
    @Nullable Tank[] tank = new Tank[days];
    double[] worth = new double[days];
    for (int d = 0; d < days; d++) {
      tank[d] = tank(d);
      worth[d] = best;
    }
    int most = all.maxPasses();
    double[][] sum = new double[most + 1][days + 1];
    for (int left = 1; left <= most; left++) {
      for (int d = days - 1; d >= 0; d--) {
        double with = worth[d] + sum[left - 1][all.firstAfter(d)];
        sum[left][d] = Math.min(sum[left][d + 1], with);
      }
    }
    List<Tank> out = new ArrayList<>();
    int left = most;
    int d = 0;
    while (left > 0 && d < days) {
      Tank here = tank[d];
      if (here != null && sum[left][d] < sum[left][d + 1]) {
        out.add(here);
        d = all.firstAfter(d);
        left--;
      } else {
        d++;
      }
    }
    return out;
  }

  /** The best tank of a day that saves more than it costs, if any. */
  private @Nullable Tank tank(int d) {
    Day day = all.days().get(d);
    double sprayed = (double) (all.years() - day.mostMissed()) / all.years();
    offers.clear();
    for (Part p : day.parts()) {
      double saves = prices.saves(p.site(), p.day(), p.reach());
      offers.add(new Offer(p, saves, sprayed * p.cost() + prices.ofUse(p) - saves));
    }
    offers.sort(Comparator.comparingDouble(Offer::least));
    best = 0;
    bestParts = List.of();
    add(new ArrayList<>(), 0, prices.ofPass(d) + sprayed * all.passCost());
    return bestParts.isEmpty() ? null : Tank.of(all, bestParts.stream().map(Offer::part).toList());
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
      if (sum + Math.min(next.least, room * next.least) >= best) {
        // None of those that come after does more.
        return;
      }
      if (tank.stream().allMatch(o -> all.mix(o.part, next.part))) {
        tank.add(next);
        if (sum + next.least < best) {
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
    double costs = prices.ofPass(parts.get(0).day()) + Tank.cost(all, parts);
    for (int i = 0; i < tank.size() && costs - leftToSave(tank, i) < best; i++) {
      Part part = parts.get(i);
      costs += prices.ofUse(part);
      List<Part> ofOneSite = parts.stream().filter(p -> p.site().equals(part.site())).toList();
      boolean first = ofOneSite.get(0).option().index() == part.option().index();
      if (ofOneSite.size() == 1 && part.missed().equals(missed)) {
        costs -= tank.get(i).saves;
      } else if (first) {
        Reach together = all.strongest(ofOneSite, missed);
        costs -= prices.saves(part.site(), part.day(), together);
      }
    }
    if (costs < best) {
      best = costs;
      bestParts = List.copyOf(tank);
    }
  }

  private static double leftToSave(List<Offer> tank, int from) {
    double sum = 0;
    for (Offer o : tank.subList(from, tank.size())) {
      sum += o.saves;
    }
    return sum;
  }
}
