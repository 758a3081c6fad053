package org.swathbook.plan.exact;

import java.util.OptionalInt;

/**
 * Every program of a linear plan, dose by dose and date by date, with nothing left out: each dose
 * is in the tank of a date or is not. It shares no code with the search.
 */
final class EveryLinearProgram {
  private final LinearPlan plan;
  private final boolean[][] sprayed;
  private int cheapest = Integer.MAX_VALUE;

  EveryLinearProgram(LinearPlan plan) {
    this.plan = plan;
    this.sprayed = new boolean[plan.dates()][plan.options()];
  }

  /** Cents of the cheapest program that meets all needs; empty when none does. */
  OptionalInt cheapest() {
    from(0, 0, 0, 0);
    return cheapest == Integer.MAX_VALUE ? OptionalInt.empty() : OptionalInt.of(cheapest);
  }

  private void from(int date, int option, int inTank, int passes) {
    if (date == plan.dates()) {
      look();
    } else if (option == plan.options()) {
      from(date + 1, 0, 0, passes);
    } else {
      from(date, option + 1, inTank, passes);
      int more = inTank == 0 ? passes + 1 : passes;
      if (more <= plan.maxPasses() && inTank < plan.maxProducts() && fits(date, option)) {
        sprayed[date][option] = true;
        from(date, option + 1, inTank + 1, more);
        sprayed[date][option] = false;
      }
    }
  }

  private boolean fits(int date, int option) {
    if (!plan.legal()[date][option]) {
      return false;
    }
    for (int other = 0; other < option; other++) {
      if (sprayed[date][other] && !plan.mix(option, other)) {
        return false;
      }
    }
    return true;
  }

  private void look() {
    int cents = 0;
    int[] kill = new int[plan.weeds()];
    for (int d = 0; d < plan.dates(); d++) {
      boolean pass = false;
      for (int o = 0; o < plan.options(); o++) {
        if (sprayed[d][o]) {
          pass = true;
          cents += plan.costCents()[o];
          for (int w = 0; w < kill.length; w++) {
            kill[w] += plan.kill()[d][o][w];
          }
        }
      }
      cents += pass ? plan.passCents() : 0;
    }
    for (int w = 0; w < kill.length; w++) {
      if (kill[w] < plan.need()[w]) {
        return;
      }
    }
    if (cents < cheapest && seasonHolds()) {
      cheapest = cents;
    }
  }

  private boolean seasonHolds() {
    for (int a = 0; a < plan.actives(); a++) {
      int sum = 0;
      int uses = 0;
      int last = Integer.MIN_VALUE / 2;
      for (int d = 0; d < plan.dates(); d++) {
        for (int o = 0; o < plan.options(); o++) {
          if (sprayed[d][o] && plan.active()[o] == a) {
            if (plan.day()[d] - last < plan.leastDays()[a]) {
              return false;
            }
            last = plan.day()[d];
            sum += plan.milliLb()[o];
            uses++;
          }
        }
      }
      if (sum > plan.capMilliLb()[a] || uses > plan.mostUses()[a]) {
        return false;
      }
    }
    return true;
  }
}
