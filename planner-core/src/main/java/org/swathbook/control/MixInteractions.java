package org.swathbook.control;

import java.util.ArrayList;
import java.util.List;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Interaction;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.Weed;

/**
 * What the partners of a tank do to each other on a weed, through leaves. Of several antagonisms on
 * one partner the strongest holds, of several synergies too; a known pair without a number changes
 * nothing here and is shown by a rule.
 */
final class MixInteractions {
  private final List<TankActive> actives;

  /** Those with a number that the tank has both partners of, and that nothing in it mends. */
  private final List<Interaction> here = new ArrayList<>();

  MixInteractions(List<TankActive> actives, List<Interaction> known) {
    this.actives = actives;
    for (Interaction i : known) {
      if (i.factor() >= 0 && i.factor() < 1 && hasPair(i) && !lifted(i)) {
        here.add(i);
      }
    }
  }

  /** What remains of an active's control, 0 to 1. */
  double antagonism(int active, Weed weed) {
    double least = 1;
    for (Interaction i : here) {
      if (weakens(i, active, weed)) {
        least = Math.min(least, i.factor());
      }
    }
    return least;
  }

  /** Whether a pair is in the tank, takes from this active on this weed, and is not mended. */
  boolean weakens(Interaction i, int active, Weed weed) {
    return i.kind() == Interaction.Kind.ANTAGONISM
        && i.concerns(weed)
        && matches(i.affects(), active)
        && hasPair(i, active)
        && !lifted(i);
  }

  /** Two actives of the tank that do more together, and what remains of the joint survival. */
  record Synergy(int one, int other, double factor) {}

  /** All synergies on a weed, the strongest first. */
  List<Synergy> synergies(Weed weed) {
    List<Synergy> out = new ArrayList<>();
    for (Interaction i : here) {
      if (i.kind() == Interaction.Kind.SYNERGY && i.concerns(weed)) {
        for (int a = 0; a < actives.size(); a++) {
          for (int b = 0; b < actives.size(); b++) {
            if (a != b && matches(i.one(), a) && matches(i.other(), b)) {
              out.add(new Synergy(a, b, i.factor()));
            }
          }
        }
      }
    }
    out.sort((a, b) -> Double.compare(a.factor(), b.factor()));
    return out;
  }

  /**
   * What remains of the joint survival by the strongest synergy whose partners are both at work on
   * the plant: on one that resists either of them there is none.
   *
   * @param survivals of each active alone, 0 to 1
   */
  static double remaining(List<Synergy> synergies, double[] survivals) {
    for (int i = 0; i < synergies.size(); i++) {
      Synergy s = synergies.get(i);
      if (survivals[s.one()] < 1 && survivals[s.other()] < 1) {
        return s.factor();
      }
    }
    return 1;
  }

  /**
   * By how much any partner can raise what some actives do together, whoever else is in the tank:
   * the natural logarithm of what would remain of the joint survival, negated; 0 for not at all.
   */
  static double mostSynergy(List<TankActive> actives, List<Interaction> known, Weed weed) {
    MixInteractions alone = new MixInteractions(actives, List.of());
    double least = 1;
    for (Interaction i : known) {
      if (i.kind() == Interaction.Kind.SYNERGY && i.factor() >= 0 && i.concerns(weed)) {
        for (int a = 0; a < actives.size(); a++) {
          if (alone.mayBe(i.one(), a) || alone.mayBe(i.other(), a)) {
            least = Math.min(least, i.factor());
          }
        }
      }
    }
    return -StrictMath.log(least);
  }

  private boolean hasPair(Interaction i) {
    for (int a = 0; a < actives.size(); a++) {
      if (hasPair(i, a)) {
        return true;
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
    return mayBe(side, active) && (side.with().isEmpty() || isInTank(side.with().get()));
  }

  /**
   * Whether an active is what a side asks for, if the tank also holds what the side has it with.
   */
  private boolean mayBe(Interaction.Side side, int active) {
    Ingredient i = actives.get(active).ingredient();
    return (side.ingredient().isPresent() || side.site().isPresent())
        && (side.ingredient().isEmpty() || side.ingredient().get().equals(i.id()))
        && (side.site().isEmpty() || side.site().get().equals(i.site()));
  }

  private boolean isInTank(Site site) {
    for (TankActive a : actives) {
      if (a.ingredient().site().equals(site)) {
        return true;
      }
    }
    return false;
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
