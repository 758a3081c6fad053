package org.swathbook.check;

import java.util.List;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Verdict;

/**
 * What all rules together say of a program.
 *
 * @param findings in the order of {@link org.swathbook.rules.Findings#ORDER}, the one on all that
 *     is not known among them
 * @param asks the rows of that one
 * @param brokenHouseRules in the order of {@link HouseRuleCheck#NAMES}
 * @param tanks what is found of the tank of each pass, in the order of the passes
 */
public record Judgement(
    Verdict verdict,
    List<Finding> findings,
    List<Ask> asks,
    List<BrokenHouseRule> brokenHouseRules,
    List<JudgedTank> tanks) {

  public Judgement {
    findings = List.copyOf(findings);
    asks = List.copyOf(asks);
    brokenHouseRules = List.copyOf(brokenHouseRules);
    tanks = List.copyOf(tanks);
  }

  /** Names of the broken house rules, each once. */
  public List<String> brokenNames() {
    return brokenHouseRules.stream().map(BrokenHouseRule::name).distinct().toList();
  }
}
