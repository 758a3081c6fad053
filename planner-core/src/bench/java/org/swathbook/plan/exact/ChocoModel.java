package org.swathbook.plan.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** A linear plan in 0/1 variables, a dose on a date each, given to Choco. */
final class ChocoModel {
  private final LinearPlan plan;
  private final Model model = new Model();
  private final List<BoolVar> variables = new ArrayList<>();
  private final List<Integer> cents = new ArrayList<>();
  private final BoolVar[][] x;
  private int bestCents = Integer.MAX_VALUE;

  private ChocoModel(LinearPlan plan) {
    this.plan = plan;
    this.x = new BoolVar[plan.dates()][plan.options()];
  }

  /**
   * Cost of the cheapest program in cents.
   *
   * @param cents of the best program met; empty when none was
   * @param proved whether no cheaper one exists
   */
  record Result(OptionalInt cents, boolean proved) {}

  static Result cheapest(LinearPlan plan, int mostSeconds) {
    return new ChocoModel(plan).solve(mostSeconds);
  }

  private Result solve(int mostSeconds) {
    List<BoolVar> passes = new ArrayList<>();
    for (int d = 0; d < plan.dates(); d++) {
      BoolVar pass = model.boolVar();
      passes.add(pass);
      price(pass, plan.passCents());
      List<BoolVar> tank = new ArrayList<>();
      for (int o = 0; o < plan.options(); o++) {
        if (!plan.legal()[d][o]) {
          continue;
        }
        x[d][o] = model.boolVar();
        tank.add(x[d][o]);
        price(x[d][o], plan.costCents()[o]);
        model.arithm(x[d][o], "<=", pass).post();
        for (int other = 0; other < o; other++) {
          if (x[d][other] != null && !plan.mix(o, other)) {
            model.arithm(x[d][o], "+", x[d][other], "<=", 1).post();
          }
        }
      }
      atMost(tank, plan.maxProducts());
    }
    atMost(passes, plan.maxPasses());
    for (int w = 0; w < plan.weeds(); w++) {
      List<BoolVar> doses = new ArrayList<>();
      List<Integer> kill = new ArrayList<>();
      for (int d = 0; d < plan.dates(); d++) {
        for (int o = 0; o < plan.options(); o++) {
          if (x[d][o] != null) {
            doses.add(x[d][o]);
            kill.add(plan.kill()[d][o][w]);
          }
        }
      }
      model.scalar(array(doses), ints(kill), ">=", plan.need()[w]).post();
    }
    seasons();
    IntVar cost = model.intVar(0, cents.stream().mapToInt(Integer::intValue).sum());
    model.scalar(array(variables), ints(cents), "=", cost).post();
    model.setObjective(Model.MINIMIZE, cost);
    Solver solver = model.getSolver();
    solver.limitTime(mostSeconds + "s");
    while (solver.solve()) {
      bestCents = cost.getValue();
    }
    return new Result(
        bestCents == Integer.MAX_VALUE ? OptionalInt.empty() : OptionalInt.of(bestCents),
        !solver.isStopCriterionMet());
  }

  private void seasons() {
    for (int a = 0; a < plan.actives(); a++) {
      List<BoolVar> all = new ArrayList<>();
      List<Integer> rate = new ArrayList<>();
      List<List<BoolVar>> on = new ArrayList<>();
      for (int d = 0; d < plan.dates(); d++) {
        on.add(new ArrayList<>());
        for (int o = 0; o < plan.options(); o++) {
          if (x[d][o] != null && plan.active()[o] == a) {
            all.add(x[d][o]);
            rate.add(plan.milliLb()[o]);
            on.get(d).add(x[d][o]);
          }
        }
      }
      if (all.isEmpty()) {
        continue;
      }
      model.scalar(array(all), ints(rate), "<=", plan.capMilliLb()[a]).post();
      atMost(all, plan.mostUses()[a]);
      for (int d = 0; d < plan.dates(); d++) {
        for (int later = d + 1; later < plan.dates(); later++) {
          if (plan.day()[later] - plan.day()[d] < plan.leastDays()[a]) {
            List<BoolVar> both = new ArrayList<>(on.get(d));
            both.addAll(on.get(later));
            atMost(both, 1);
          }
        }
      }
    }
  }

  private void price(BoolVar variable, int inCents) {
    variables.add(variable);
    cents.add(inCents);
  }

  private void atMost(List<BoolVar> some, int most) {
    if (some.size() > most) {
      model.sum(array(some), "<=", most).post();
    }
  }

  private static BoolVar[] array(List<BoolVar> some) {
    return some.toArray(new BoolVar[0]);
  }

  private static int[] ints(List<Integer> some) {
    return some.stream().mapToInt(Integer::intValue).toArray();
  }
}
