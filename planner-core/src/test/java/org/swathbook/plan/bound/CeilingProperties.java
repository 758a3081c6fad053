package org.swathbook.plan.bound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.statistics.Statistics;
import org.swathbook.catalog.IngredientId;
import org.swathbook.plan.draft.Draft;
import org.swathbook.plan.draft.FieldEvaluator;
import org.swathbook.plan.draft.Walked;
import org.swathbook.season.Kernel;

/** No program of a field drawn at random nets more than the bound on all of them. */
class CeilingProperties {
  /** Rounds: before multipliers count and soon after, and as many as the planner takes. */
  private static final int FEW = 12;

  private static final int AS_PLANNED = 60;

  @Property(tries = 25)
  void noProgramNetsMore(@ForAll long seed) {
    DrawnTanks.of(seed).ifPresent(d -> netsNoMore(d, new Random(seed)));
  }

  @Property(tries = 600)
  @Tag("slow")
  void noneOfThousandsNetsMore(@ForAll long seed) {
    DrawnTanks.of(seed).ifPresent(d -> netsNoMore(d, new Random(seed)));
  }

  private static void netsNoMore(DrawnTanks drawn, Random random) {
    List<Walked> walked = drawn.walked();
    if (walked.isEmpty()) {
      return;
    }
    Walked any = walked.get(random.nextInt(walked.size()));
    Walked good =
        walked.stream()
            .filter(Walked::meetsHouseRules)
            .max(Comparator.comparing(w -> w.net().dollars()))
            .orElse(any);
    for (Walked known : List.of(any, good)) {
      double most =
          Ceiling.mostNet(
              drawn.programs.small.book,
              drawn.programs.small.space(),
              drawn.programs.evaluator,
              known,
              random.nextInt(4) == 0 ? AS_PLANNED : 1 + random.nextInt(FEW));
      for (Walked w : walked) {
        if (!known.meetsHouseRules() || w.meetsHouseRules()) {
          assertThat(w.net().dollars()).isLessThanOrEqualTo(most);
        }
      }
    }
    Statistics.label("some program meets the house rules").collect(good.meetsHouseRules());
  }

  /** The program that a tangent is held against costs no more at its prices than any other. */
  @Property(tries = 25)
  void noProgramCostsLessAtItsPrices(@ForAll long seed) {
    DrawnTanks.of(seed).ifPresent(d -> costsNoLess(d, new Random(seed)));
  }

  private static void costsNoLess(DrawnTanks drawn, Random random) {
    AllDoses all = drawn.all;
    List<Draft> drafts =
        drawn.programs.drafts.stream()
            .filter(d -> d.stops().size() <= all.maxPasses() && liesApart(all, drawn, d))
            .toList();
    for (int i = 0; i < 3 && !drafts.isEmpty(); i++) {
      Prices prices = prices(drawn, drafts, 1, random);
      double least = Blend.of(BestProgram.of(all, prices)).at(prices);
      assertThat(least).isLessThanOrEqualTo(0);
      for (Draft d : drafts) {
        assertThat(least).isLessThanOrEqualTo(Blend.of(drawn.tanks(d)).at(prices) + 1e-9);
      }
    }
  }

  /** Of a tangent at a blend of two programs, with some of all that multipliers may stand for. */
  private static Prices prices(DrawnTanks drawn, List<Draft> drafts, double most, Random random) {
    AllDoses all = drawn.all;
    Kernel kernel = drawn.programs.evaluator.kernel();
    Blend at = Blend.NOTHING;
    for (int i = 0; i < 2; i++) {
      Draft any = drafts.get(random.nextInt(drafts.size()));
      at = at.towards(drawn.tanks(any), random.nextDouble());
    }
    Map<IngredientId, Double> uses = new TreeMap<>();
    at.uses().keySet().forEach(active -> uses.put(active, 5 * random.nextDouble()));
    Prices prices = new Prices(all, random.nextBoolean() ? uses : Map.of());
    LossMeasure.of(all, kernel).of(at).addTo(prices, most * random.nextDouble());
    for (Ceiling.Held h : Ceiling.houseRules(drawn.programs.small.book.house(), all, kernel)) {
      if (random.nextInt(4) == 0) {
        h.measure().of(at).addTo(prices, most * random.nextDouble());
      }
    }
    return prices;
  }

  private static boolean liesApart(AllDoses all, DrawnTanks drawn, Draft draft) {
    List<Tank> tanks = drawn.tanks(draft);
    for (int i = 1; i < tanks.size(); i++) {
      if (tanks.get(i).day() < all.firstAfter(tanks.get(i - 1).day())) {
        return false;
      }
    }
    return true;
  }

  /** Of each day the cheapest of all tanks of one or two products, and none that costs less. */
  @Property(tries = 15)
  void theBestTankIsThatOfAllTanks(@ForAll long seed) {
    DrawnTanks.of(seed).ifPresent(d -> everyTank(d, new Random(seed)));
  }

  @Property(tries = 400)
  @Tag("slow")
  void everyBestTankIs(@ForAll long seed) {
    DrawnTanks.of(seed).ifPresent(d -> everyTank(d, new Random(seed)));
  }

  private static void everyTank(DrawnTanks drawn, Random random) {
    AllDoses all = drawn.all;
    Prices ofAll = prices(drawn, drawn.programs.drafts, 0.1, random);
    for (int day = 0; day < all.days().size(); day++) {
      Optional<Tank> found = BestProgram.ofDay(all, ofAll, day);
      double costs = found.map(ofAll::of).orElse(0.0);
      double best = ofOneOrTwo(all, ofAll, all.days().get(day));
      assertThat(costs).isLessThanOrEqualTo(best + 1e-9);
      int products = found.map(t -> t.parts().size()).orElse(0);
      if (products <= 2) {
        assertThat(costs).isCloseTo(best, within(1e-9));
      }
      Statistics.label("products in the best tank").collect(products);
      Statistics.label("some tank pays")
          .collect(products > 0)
          .coverage(c -> c.check(true).percentage(p -> p > 10));
    }
  }

  private static double ofOneOrTwo(AllDoses all, Prices prices, Day day) {
    double best = 0;
    for (Part a : day.parts()) {
      best = Math.min(best, prices.of(Tank.of(all, List.of(a))));
      for (Part b : day.parts()) {
        if (all.maxProducts() > 1 && b.option().index() > a.option().index() && all.mix(a, b)) {
          best = Math.min(best, prices.of(Tank.of(all, List.of(a, b))));
        }
      }
    }
    return best;
  }

  /** What is taken off for keeping to a rule is never taken off a program that breaks it. */
  @Property(tries = 25)
  void whatALegalProgramKeepsToIsNotHeldAgainstIt(@ForAll long seed) {
    DrawnTanks.of(seed).ifPresent(CeilingProperties::keepsTo);
  }

  @Property(tries = 600)
  @Tag("slow")
  void noneOfThousandsIsHeldToMore(@ForAll long seed) {
    DrawnTanks.of(seed).ifPresent(CeilingProperties::keepsTo);
  }

  private static void keepsTo(DrawnTanks drawn) {
    AllDoses all = drawn.all;
    FieldEvaluator evaluator = drawn.programs.evaluator;
    List<Ceiling.Held> held =
        Ceiling.houseRules(drawn.programs.small.book.house(), all, evaluator.kernel());
    Map<IngredientId, Boolean> onlyOnce = new HashMap<>();
    for (Walked w : drawn.walked()) {
      Blend whole = Blend.of(drawn.tanks(w.draft()));
      if (w.meetsHouseRules()) {
        held.forEach(h -> assertThat(h.measure().of(whole).total()).isLessThanOrEqualTo(h.most()));
      }
      whole
          .uses()
          .forEach(
              (active, uses) -> {
                if (uses > 1) {
                  assertThat(onlyOnce.computeIfAbsent(active, a -> OnlyOnce.is(all, evaluator, a)))
                      .isFalse();
                }
              });
      Statistics.label("meets the house rules").collect(w.meetsHouseRules());
    }
  }
}
