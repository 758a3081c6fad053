package org.swathbook.plan.bound;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.swathbook.book.Book;
import org.swathbook.book.HouseRules;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Site;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.PassesMade;
import org.swathbook.plan.draft.PlanSpace;
import org.swathbook.plan.draft.Walked;
import org.swathbook.season.Kernel;

/**
 * What no legal program of a field nets more than, of any of its doses in any tanks on any of its
 * days.
 *
 * <p>What a program costs and what it leaves to lose is bounded from below by a function that is
 * convex in what its doses do ({@link Measure}, {@link LossMeasure}), on blends of programs too. A
 * tangent of it at any blend lies below it everywhere, and at the one program that is least on the
 * tangent ({@link BestProgram}) it bounds all programs. So goes the method of Frank & Wolfe (1956,
 * Naval Research Logistics Quarterly 3: 95-110, from memory): towards that program, and again.
 *
 * <p>House rules of the season, and that an active may be used but once, come in with multipliers:
 * a program that keeps to them is not above its own cost and loss when what it has to spare is
 * taken off (Lagrangian relaxation; Geoffrion 1974, Mathematical Programming Study 2: 82-114, from
 * memory). Any multipliers give a bound; these follow what the blend breaks.
 */
public final class Ceiling {
  /** More than all rounding of sums and to cents, dollars on an acre. */
  private static final double ROUNDING = 0.02;

  /** The blend has settled so far before it is asked what it breaks (default, ours). */
  private static final int SETTLES = 6;

  /**
   * How fast multipliers follow what is broken, per dollar that the known program costs and loses:
   * dollars a point of control, and a use of an active. They settle over so many rounds (defaults,
   * ours: they steer how soon the bound is good, and any of them is a bound).
   */
  private static final double PER_POINT = 0.0005;

  private static final double PER_USE = 0.05;
  private static final double SETTLING = 20;

  /** So far past its limit a house rule does not see, points. */
  private static final double UNSEEN = 1e-6;

  private final AllDoses all;
  private final FieldEvaluator evaluator;
  private final Measure loss;
  private final List<Held> held;

  /** Found when an active is first used more than once: every pair of its doses is asked about. */
  private final Map<IngredientId, Boolean> onlyOnce = new HashMap<>();

  private final Map<IngredientId, Double> perUse = new TreeMap<>();
  private final double scale;

  /** Dollars that a unit past the limit of each measure held costs. */
  private final double[] perUnit;

  /** A measure that a program may not pass by, and how much of it there may be. */
  record Held(Measure measure, double most) {}

  private Ceiling(AllDoses all, FieldEvaluator evaluator, List<Held> held, double scale) {
    this.all = all;
    this.evaluator = evaluator;
    this.loss = LossMeasure.of(all, evaluator.kernel());
    this.held = List.copyOf(held);
    this.perUnit = new double[held.size()];
    this.scale = scale;
  }

  /**
   * Dollars on an acre that no legal program nets more than. When the known program meets the house
   * rules, no legal program that meets them does.
   *
   * @param rounds how often the tangent is made anew
   */
  public static double mostNet(
      Book book, PlanSpace space, FieldEvaluator evaluator, Walked known, int rounds) {
    boolean within = known.meetsHouseRules();
    AllDoses all = AllDoses.of(book, space, evaluator, within);
    List<Held> held = within ? houseRules(book.house(), all, evaluator.kernel()) : List.of();
    PassesMade made = evaluator.passesMade();
    double withoutLoss = (made.priced() ? evaluator.kernel().weedFreeDollars() : 0) - made.cost();
    double scale = Math.max(0, withoutLoss - known.net().dollars());
    return withoutLoss - new Ceiling(all, evaluator, held, scale).least(rounds) + ROUNDING;
  }

  /** Control of each driver weed, with all sites and with each one gone. */
  static List<Held> houseRules(HouseRules house, AllDoses all, Kernel kernel) {
    List<Held> out = new ArrayList<>();
    for (int weed : kernel.drivers()) {
      out.add(
          new Held(
              ControlMeasure.of(all, weed, Optional.empty()),
              100 * (1 - house.seasonControl()) + UNSEEN));
      for (Site site : all.sites()) {
        out.add(
            new Held(
                ControlMeasure.of(all, weed, Optional.of(site)),
                100 * (1 - house.oneSiteGone()) + UNSEEN));
      }
    }
    return out;
  }

  /** What any program costs and loses at least, dollars on an acre. */
  private double least(int rounds) {
    Blend blend = Blend.NOTHING;
    double out = 0;
    for (int round = 0; round < rounds; round++) {
      Prices prices = new Prices(all, perUse);
      double now = value(blend, Optional.of(prices));
      List<Tank> program = BestProgram.of(all, prices);
      double lower = blend.at(prices) - Blend.of(program).at(prices);
      double bound = now - lower;
      // What is no number bounds nothing.
      out = bound > out ? bound : out;
      blend = step(blend, program, now, lower, round);
      if (round >= SETTLES) {
        follow(blend, round);
      }
    }
    return out;
  }

  /** As far towards a program as a parabola through the last points and the tangent says. */
  private Blend step(Blend from, List<Tank> program, double now, double lower, int round) {
    double trial = 2.0 / (round + 2);
    double bent = value(from.towards(program, trial), Optional.empty()) - now + lower * trial;
    double part = bent > 0 ? Math.min(1, lower * trial * trial / (2 * bent)) : trial;
    return part > 0 ? from.towards(program, part) : from;
  }

  /**
   * What a blend costs and loses, and what it breaks at what that costs.
   *
   * @param prices to be told
   */
  private double value(Blend blend, Optional<Prices> prices) {
    Measure.Left left = loss.of(blend);
    prices.ifPresent(p -> left.addTo(p, 1));
    double sum = blend.cost() + left.total();
    for (int i = 0; i < perUnit.length; i++) {
      double costs = perUnit[i];
      if (costs > 0) {
        Measure.Left of = held.get(i).measure.of(blend);
        prices.ifPresent(p -> of.addTo(p, costs));
        sum += costs * (of.total() - held.get(i).most);
      }
    }
    Map<IngredientId, Double> uses = blend.uses();
    for (Map.Entry<IngredientId, Double> e : perUse.entrySet()) {
      sum += e.getValue() * (uses.getOrDefault(e.getKey(), 0.0) - 1);
    }
    return sum;
  }

  private void follow(Blend blend, int round) {
    double pace = scale * SETTLING / (SETTLING + round);
    for (int i = 0; i < perUnit.length; i++) {
      double over = held.get(i).measure.of(blend).total() - held.get(i).most;
      perUnit[i] = Math.max(0, perUnit[i] + pace * PER_POINT * over);
    }
    blend
        .uses()
        .forEach(
            (active, uses) -> {
              if ((uses > 1 || perUse.containsKey(active)) && isOnlyOnce(active)) {
                double before = perUse.getOrDefault(active, 0.0);
                perUse.put(active, Math.max(0, before + pace * PER_USE * (uses - 1)));
              }
            });
  }

  private boolean isOnlyOnce(IngredientId active) {
    return onlyOnce.computeIfAbsent(active, a -> OnlyOnce.is(all, evaluator, a));
  }
}
