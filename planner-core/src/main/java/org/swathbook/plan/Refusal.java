package org.swathbook.plan;

import java.util.List;
import org.swathbook.check.BrokenHouseRule;
import org.swathbook.rules.Finding;

/**
 * Why no program is recommended.
 *
 * @param because findings that hold whatever is sprayed, or that leave nothing legal; then there is
 *     no program at all
 * @param broken house rules that the program shown breaks
 * @param noHelp house rules of which it is proved that loosening one of them alone allows no
 *     program made of the passes that were combined
 */
public record Refusal(
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
    return new Refusal(because, List.of(), List.of(), List.of());
  }
}
