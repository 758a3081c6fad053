package org.swathbook.plan.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** A linear plan in 0/1 variables, a dose on a date each, given to CP-SAT. */
final class CpSatModel {
  private CpSatModel() {}

  /**
   * Cost of the cheapest program in cents; empty when there is none.
   *
   * @param workers threads; 0 leaves their number to the solver
   * @throws IllegalStateException when the solver ends without a proof
   */
  static OptionalInt cheapest(LinearPlan plan, int workers) {
    CpModel model = new CpModel();
    Literal[][] x = new Literal[plan.dates()][plan.options()];
    LinearExprBuilder cost = LinearExpr.newBuilder();
    LinearExprBuilder passes = LinearExpr.newBuilder();
    LinearExprBuilder[] kill = new LinearExprBuilder[plan.weeds()];
    for (int w = 0; w < kill.length; w++) {
      kill[w] = LinearExpr.newBuilder();
    }
    for (int d = 0; d < plan.dates(); d++) {
      Literal pass = model.newBoolVar("pass " + d);
      passes.add(pass);
      cost.addTerm(pass, plan.passCents());
      List<Literal> tank = new ArrayList<>();
      for (int o = 0; o < plan.options(); o++) {
        if (!plan.legal()[d][o]) {
          continue;
        }
        x[d][o] = model.newBoolVar("dose " + d + " " + o);
        tank.add(x[d][o]);
        model.addImplication(x[d][o], pass);
        cost.addTerm(x[d][o], plan.costCents()[o]);
        for (int w = 0; w < kill.length; w++) {
          kill[w].addTerm(x[d][o], plan.kill()[d][o][w]);
        }
        for (int other = 0; other < o; other++) {
          if (x[d][other] != null && !plan.mix(o, other)) {
            model.addAtMostOne(new Literal[] {x[d][o], x[d][other]});
          }
        }
      }
      model.addLessOrEqual(LinearExpr.sum(tank.toArray(new Literal[0])), plan.maxProducts());
    }
    model.addLessOrEqual(passes, plan.maxPasses());
    for (int w = 0; w < kill.length; w++) {
      model.addGreaterOrEqual(kill[w], plan.need()[w]);
    }
    seasons(plan, model, x);
    model.minimize(cost);
    CpSolver solver = new CpSolver();
    if (workers > 0) {
      solver.getParameters().setNumWorkers(workers);
    }
    CpSolverStatus status = solver.solve(model);
    return switch (status) {
      case OPTIMAL -> OptionalInt.of((int) Math.round(solver.objectiveValue()));
      case INFEASIBLE -> OptionalInt.empty();
      default -> throw new IllegalStateException("ended " + status);
    };
  }

  private static void seasons(LinearPlan plan, CpModel model, Literal[][] x) {
    for (int a = 0; a < plan.actives(); a++) {
      LinearExprBuilder rate = LinearExpr.newBuilder();
      LinearExprBuilder uses = LinearExpr.newBuilder();
      List<List<Literal>> on = new ArrayList<>();
      for (int d = 0; d < plan.dates(); d++) {
        on.add(new ArrayList<>());
        for (int o = 0; o < plan.options(); o++) {
          if (x[d][o] != null && plan.active()[o] == a) {
            rate.addTerm(x[d][o], plan.milliLb()[o]);
            uses.add(x[d][o]);
            on.get(d).add(x[d][o]);
          }
        }
      }
      model.addLessOrEqual(rate, plan.capMilliLb()[a]);
      model.addLessOrEqual(uses, plan.mostUses()[a]);
      for (int d = 0; d < plan.dates(); d++) {
        for (int later = d + 1; later < plan.dates(); later++) {
          if (plan.day()[later] - plan.day()[d] < plan.leastDays()[a]) {
            List<Literal> both = new ArrayList<>(on.get(d));
            both.addAll(on.get(later));
            model.addAtMostOne(both.toArray(new Literal[0]));
          }
        }
      }
    }
  }
}
