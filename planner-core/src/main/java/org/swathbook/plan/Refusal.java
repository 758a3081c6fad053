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
 */
public record Refusal(
    List<Finding> because, List<BrokenHouseRule> broken, List<Relaxation> relaxations) {

  public Refusal {
    because = List.copyOf(because);
    broken = List.copyOf(broken);
    relaxations = List.copyOf(relaxations);
  }
}
