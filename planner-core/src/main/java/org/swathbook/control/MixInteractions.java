package org.swathbook.control;

import java.util.List;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Weed;

/**
 * What the partners of a tank do to each other on a weed, through leaves. Of several antagonisms on
 * one partner the strongest holds, of several synergies too; a known pair without a number changes
 * nothing here and is shown by a rule.
 */
final class MixInteractions {
  private final List<TankActive> actives;
  private final List<Interaction> known;

  MixInteractions(List<TankActive> actives, List<Interaction> known) {
    this.actives = actives;
    this.known = known.stream().filter(i -> i.factor() >= 0 && i.factor() < 1).toList();
  }

  /** What remains of an active's control, 0 to 1. */
  double antagonism(int active, Weed weed) {
    double least = 1;
    for (Interaction i : known) {
      if (i.kind() == Interaction.Kind.ANTAGONISM
          && i.concerns(weed)
          && matches(i.affects(), active)
          && hasPair(i, active)
          && !lifted(i)) {
        least = Math.min(least, i.factor());
      }
    }
    return least;
  }

  /**
   * What remains of the joint survival. A synergy needs both partners at work on the plant, so the
   * survivals of each, 0 to 1, come in: on a plant that resists one of them there is none.
   */
  double synergy(double[] survivals, Weed weed) {
    double least = 1;
    for (Interaction i : known) {
      if (i.kind() == Interaction.Kind.SYNERGY
          && i.factor() < least
          && i.concerns(weed)
          && !lifted(i)
          && bothWork(i, survivals)) {
        least = i.factor();
      }
    }
    return least;
  }

  private boolean bothWork(Interaction i, double[] survivals) {
    for (int a = 0; a < actives.size(); a++) {
      for (int b = 0; b < actives.size(); b++) {
        if (a != b
            && survivals[a] < 1
            && survivals[b] < 1
            && matches(i.one(), a)
            && matches(i.other(), b)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean hasPair(Interaction i, int affected) {
    for (int b = 0; b < actives.size(); b++) {
      if (b != affected
          && (matches(i.one(), affected) && matches(i.other(), b)
              || matches(i.other(), affected) && matches(i.one(), b))) {
        return true;
      }
    }
    return false;
  }

  private boolean matches(Interaction.Side side, int active) {
    TankActive a = actives.get(active);
    return side.ingredient().map(id -> id.equals(a.ingredient().id())).orElse(true)
        && side.site().map(s -> s.equals(a.ingredient().site())).orElse(true)
        && (side.ingredient().isPresent() || side.site().isPresent())
        && side.with()
            .map(s -> actives.stream().anyMatch(o -> o.ingredient().site().equals(s)))
            .orElse(true);
  }

  /** Whether an active is in the tank at the rate from which on the pair does not show. */
  private boolean lifted(Interaction i) {
    return i.unless()
        .map(
            u ->
                actives.stream()
                    .anyMatch(
                        a ->
                            a.ingredient().id().equals(u.ingredient())
                                && !org.swathbook.measure.Quantity.exceeds(
                                    u.atLeast().kgPerHa(), a.kgPerHa())))
        .orElse(false);
  }
}
