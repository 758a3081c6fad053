package org.swathbook.check;

import java.util.List;
import org.swathbook.rules.ActiveUse;
import org.swathbook.tank.TankNeeds;
import org.swathbook.tank.UnmetNeed;

/**
 * What the labels of a tank leave open together, to stand beside its products.
 *
 * @param unmet adjuvants that a label asks for and that partners refuse
 */
public record JudgedTank(TankDroplets droplets, List<UnmetNeed> unmet) {

  public JudgedTank {
    unmet = List.copyOf(unmet);
  }

  public static JudgedTank of(List<ActiveUse> tank) {
    return new JudgedTank(
        TankDroplets.of(tank),
        TankNeeds.of(tank.stream().map(ActiveUse::partner).toList()).unmet());
  }
}
