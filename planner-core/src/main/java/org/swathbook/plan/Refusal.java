package org.swathbook.plan;

import java.util.List;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.rules.Finding;

/**
 * Why no program is recommended.
 *
 * @param isOfAsked whether it is what was asked that cannot be had; else it is the field or its
 *     house
 * @param because findings that hold whatever is sprayed, or that leave nothing legal; then there is
 *     no program at all
 * @param broken house rules that the program shown breaks
 * @param noHelp house rules of which it is proved that loosening one of them alone allows no
 *     program made of the passes that were combined
 */
public record Refusal(
    boolean isOfAsked,
    List<Finding> because,
    List<BrokenHouseRule> broken,
    List<Relaxation> relaxations,
    List<String> noHelp) {

  public Refusal {
    because = List.copyOf(because);
    broken = List.copyOf(broken);
    relaxations = List.copyOf(relaxations);
    noHelp = List.copyOf(noHelp);
  }

  /** A refusal of the field: nothing is planned. */
  static Refusal ofField(List<Finding> because) {
    return new Refusal(false, because, List.of(), List.of(), List.of());
  }

  /**
   * A refusal of what was asked: the field could be planned otherwise.
   *
   * @param because what forbids an active that was asked for; empty when nothing does by itself
   */
  static Refusal ofAsked(List<Finding> because) {
    return new Refusal(true, because, List.of(), List.of(), List.of());
  }
}
